package org.tidegate.examination;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Findings;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.Bearer;
import org.tidegate.finding.PictureFinding.DocumentFinding;
import org.tidegate.finding.Severity;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;

/** What the zones of documents in a submission's pictures do to its discrepancies; the sample's Maren Tollisker, born 1988-03-14. */
class IdentityDocumentTest {

    private static final Bearer HERS = new Bearer("TOLLISKER", "MAREN", "880314");
    private static final Bearer MOTHERS = new Bearer("TOLLISKER", "SIGNE", "610729");
    private static final Bearer SISTERS = new Bearer("TOLLISKER", "MARIN", "880314");

    private static final Rules RULES = ((RulesResult.Loaded) RulesReader.bundled()).rules();
    private static final BookResult.Read BOOK =
            (BookResult.Read) BookReader.read(Path.of("sample-mailbox", "appointments.csv"));
    private static Findings perfect;

    @BeforeAll
    static void inspect() throws IOException {
        byte[] raw = Files.readAllBytes(Path.of("sample-mailbox", "01-perfect.eml"));
        perfect = new Inspector(RULES).inspect(raw, new DeliveryFacts(Optional.empty(), new byte[16], List.of()));
    }

    @Test
    void herOwnDocumentAgrees() {
        assertThat(holds(HERS)).isEmpty();
    }

    @Test
    void anothersDocumentIsHeld() {
        assertThat(holds(MOTHERS)).containsExactly("id-differs");
    }

    @Test
    void anothersDocumentBesideHersChangesNothing() {
        assertThat(holds(MOTHERS, HERS)).isEmpty();
    }

    @Test
    void whatWasNotReadOrIsNotSureIsNoBadFact() {
        assertThat(holds()).isEmpty();
        assertThat(holds(SISTERS)).isEmpty();
        assertThat(holds(MOTHERS, SISTERS)).isEmpty();
    }

    @Test
    void theReasonTellsTheDegree() {
        assertThat(held(MOTHERS).get(0).reason())
                .contains("surname the same, given names another, date of birth another");
    }

    private static List<String> holds(Bearer... bearers) {
        return held(bearers).stream().map(d -> d.code().code()).toList();
    }

    private static List<Discrepancy> held(Bearer... bearers) {
        OpenTests tests = OpenTests.of(BOOK.book().tests());
        return new SmallInbox(RULES, tests, List.of(), Set.of())
                .add(with(List.of(bearers))).discrepancies().stream()
                        .filter(d -> d.severity() == Severity.HOLD)
                        .toList();
    }

    /** The same message, a document with such a zone for each bearer in a picture of its own. */
    private static Findings with(List<Bearer> bearers) {
        List<PictureFinding> pictures = new ArrayList<>(perfect.pictures());
        bearers.forEach(b -> pictures.add(with(perfect.pictures().get(0), b)));
        return new Findings(
                perfect.format(),
                perfect.envelope(),
                perfect.delivered(),
                perfect.readings(),
                perfect.urgentWords(),
                perfect.coveringNoteOnly(),
                pictures,
                perfect.fileProblems(),
                perfect.problems());
    }

    private static PictureFinding with(PictureFinding p, Bearer bearer) {
        return new PictureFinding(
                p.path(),
                p.fileName(),
                p.mediaType(),
                p.width(),
                p.height(),
                p.kind(),
                p.readable(),
                p.make(),
                p.model(),
                p.software(),
                p.capture(),
                p.legibility(),
                List.of(),
                new DocumentFinding(true, true, 1, List.of(), List.of(), List.of(), List.of(), Optional.of(bearer)),
                Optional.empty(),
                p.editSigns());
    }
}
