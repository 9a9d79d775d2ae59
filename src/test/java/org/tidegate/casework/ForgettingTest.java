package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.Judging.Reason;
import org.tidegate.casework.Retaining.Need;
import org.tidegate.casework.Retaining.Outcome;
import org.tidegate.casework.Retaining.Why;
import org.tidegate.casework.Splitting.Pick;
import org.tidegate.casework.Splitting.Place;
import org.tidegate.store.StoredMessage;
import org.tidegate.work.Ending;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/** What its time is up of is forgotten; what is open or held back is not; the ledger stays whole. */
class ForgettingTest {

    private static final Instant TAKEN = Instant.parse("2026-05-04T06:10:00Z");

    @TempDir
    Path folder;

    private SampleDesk sample;
    private Desk desk;

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder, TAKEN);
        desk = sample.desk();
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private SubmissionId closed(String file) {
        SubmissionId id = sample.take(file);
        setAside(id);
        return id;
    }

    private void setAside(SubmissionId id) {
        if (sample.now(id).state() != SubmissionState.ASIDE) {
            ActionResult done = desk.judging().setAside(SampleDesk.LEAD, sample.ticket(id), Reason.of("other"));
            assertThat(done).as(done.words()).isInstanceOf(ActionResult.Done.class);
        }
    }

    private StoredMessage message(SubmissionId id) {
        return desk.store()
                .<List<StoredMessage>>read(tx -> tx.messages().ofSubmission(id))
                .get(0);
    }

    private boolean kept(SubmissionId id) {
        return desk.vault().raw(message(id)).isPresent();
    }

    private long blobs() throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve("blobs"))) {
            return files.filter(Files::isRegularFile).count();
        }
    }

    private String ledger() {
        return desk.store().read(tx -> tx.ledger().leaves(0, 10_000)).stream()
                .map(b -> new String(b, StandardCharsets.UTF_8))
                .reduce("", (a, b) -> a + "\n" + b);
    }

    private void turnToEnd(String term, Duration more) {
        Instant end = ZonedDateTime.parse("2026-05-04T07:10:00+01:00[Europe/London]")
                .plus(java.time.Period.parse(term))
                .toInstant();
        sample.turnTo(end.plus(more));
    }

    /** The terms are those of {@code rules/retention.yaml}; a term counts local days, across the change of clocks too. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            01-perfect.eml,       P14D, identity-pictures, 1
            44-no-id.eml,         P90D, pictures,          0
            40-no-photo.eml,      P90D, messages,          0
            20-out-of-office.eml, P30D, aside,             0
            50-heic.eml,          P14D, identity-pictures, 0
            """)
    void eachKindHasItsTerm(String file, String term, String code, int cassettesLeft) throws IOException {
        SubmissionId id = closed(file);
        turnToEnd(term, Duration.ZERO);
        desk.forgetting().drain();
        assertThat(kept(id)).as("to the last moment").isTrue();
        turnToEnd(term, Duration.ofMillis(1));
        desk.forgetting().drain();
        assertThat(kept(id)).isFalse();
        assertThat(blobs()).as("cassettes by themselves").isEqualTo(cassettesLeft);
        assertThat(ledger()).contains("message-forgotten").contains("\"" + code + "\"");
        Kept.ledger(desk.store());
    }

    @Test
    void assessmentsLettersAndFingerprintsGoAtTheirOwnTime() {
        SubmissionId id = closed("01-perfect.eml");
        turnToEnd("P14D", Duration.ofMillis(1));
        desk.forgetting().drain();
        assertThat(desk.retaining().stock().counts().fingerprints()).isEqualTo(1);
        assertThat(desk.casebook().submission(id, sample.now()))
                .as("what was decided")
                .isPresent();
        turnToEnd("P90D", Duration.ofMillis(1));
        assertThat(desk.forgetting().drain()).isPositive();
        assertThat(desk.casebook().submission(id, sample.now())).isEmpty();
        assertThat(desk.retaining().stock().counts().fingerprints()).isZero();
        assertThat(ledger()).contains("case-forgotten", "fingerprints-forgotten");
        assertThat(desk.forgetting().drain()).as("nothing is forgotten twice").isZero();
    }

    @Test
    void whatIsOpenOrHeldBackIsKeptAndSaid() {
        SubmissionId open = sample.take("40-no-photo.eml");
        SubmissionId disputed = closed("01-perfect.eml");
        assertThat(desk.retaining().holdBack(SampleDesk.OFFICER, disputed, Need.DISPUTE))
                .isInstanceOf(Outcome.Done.class);
        turnToEnd("P90D", Duration.ofDays(1));
        desk.forgetting().drain();
        assertThat(kept(open)).isTrue();
        assertThat(kept(disputed)).isTrue();
        assertThat(desk.casebook().submission(disputed, sample.now())).isPresent();
        assertThat(desk.retaining().stock().overdue()).containsExactly(open, disputed);
        assertThat(desk.retaining().forget(SampleDesk.OFFICER, disputed, Why.ASKED_FOR))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class, r -> assertThat(r.code()).isEqualTo("held-back"));
        assertThat(desk.retaining().lift(SampleDesk.OFFICER, disputed)).isInstanceOf(Outcome.Done.class);
        setAside(open);
        desk.forgetting().drain();
        assertThat(kept(open) || kept(disputed)).isFalse();
        assertThat(ledger()).contains("held-back", "hold-lifted", "\"who\":\"dora\"");
    }

    @Test
    void aPersonsMailIsForgottenAtOnceAndWhatIsLeftCannotBeActedOn() throws IOException {
        SubmissionId id = sample.take("32-missing-id-first.eml");
        assertThat(desk.retaining().forget(SampleDesk.OFFICER, id, Why.ASKED_FOR))
                .isEqualTo(new Outcome.Done(List.of(id)));
        assertThat(kept(id)).isFalse();
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.CLOSED);
        assertThat(desk.casebook().submission(id, sample.now())).isEmpty();
        assertThat(desk.retaining().stock().counts().fingerprints()).isZero();
        assertThat(desk.judging().reopen(SampleDesk.LEAD, sample.ticket(id), Reason.of("other")))
                .isInstanceOfSatisfying(
                        ActionResult.Refused.class, r -> assertThat(r.code()).isEqualTo("forgotten"));
        assertThat(blobs())
                .as("a crash between the keys and their bytes, of the message and of its cassette")
                .isEqualTo(2);
        desk.forgetting().drain();
        assertThat(blobs()).isZero();
        Kept.ledger(desk.store());
    }

    @Test
    void whoMayNotForgetIsRefusedAndNothingHappens() {
        SubmissionId id = sample.take("40-no-photo.eml");
        int before = ledger().length();
        assertThat(desk.retaining().forget(SampleDesk.LEAD, id, Why.ASKED_FOR)).isInstanceOf(Outcome.Forbidden.class);
        assertThat(desk.retaining().holdBack(SampleDesk.LEAD, id, Need.DISPUTE)).isInstanceOf(Outcome.Forbidden.class);
        assertThat(desk.retaining().lift(SampleDesk.AUDITOR, id)).isInstanceOf(Outcome.Forbidden.class);
        assertThat(desk.retaining().forget(SampleDesk.OFFICER, new SubmissionId(99), Why.ASKED_FOR))
                .isInstanceOf(Outcome.Refused.class);
        assertThat(desk.retaining().lift(SampleDesk.OFFICER, id)).isInstanceOf(Outcome.Refused.class);
        assertThat(ledger()).hasSize(before);
        assertThat(kept(id)).isTrue();
    }

    @Test
    void aLetterOnItsWayOutIsNotCutOff() {
        SubmissionId id = sample.take("12-sent-late.eml");
        SubmissionId asked = sample.take("25-unreadable-subject.eml");
        assertThat(desk.judging()
                        .voidTest(
                                SampleDesk.READER,
                                sample.ticket(id),
                                List.of(org.tidegate.finding.DiscrepancyCode.LATE),
                                Reason.of("outside-window")))
                .isInstanceOf(ActionResult.Done.class);
        assertThat(desk.retaining().forget(SampleDesk.OFFICER, id, Why.ASKED_FOR))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class, r -> assertThat(r.code()).isEqualTo("letter-waiting"));
        assertThat(desk.retaining().forget(SampleDesk.OFFICER, asked, Why.NOT_FOR_US))
                .isInstanceOf(Outcome.Done.class);
    }

    @Test
    void aSplitMessageStaysAsLongAsOneOfItsSubmissionsNeedsItAndGoesForAllAtOnce() {
        SubmissionId home = sample.take(FamilyMail.raw());
        String path = desk.casebook()
                .submission(home, sample.now())
                .orElseThrow()
                .messages()
                .get(0)
                .findings()
                .pictures()
                .get(1)
                .path();
        assertThat(desk.splitting()
                        .split(
                                SampleDesk.OPERATOR,
                                sample.ticket(home),
                                new TestKey(FamilyMail.OTHER, 1),
                                Map.of(new Pick(0, path), Place.THERE),
                                Splitting.Why.ONE_MAIL_FOR_SEVERAL))
                .isInstanceOf(ActionResult.Done.class);
        SubmissionId part = SubmissionId.parse(home + ".1").orElseThrow();
        setAside(home);
        turnToEnd("P14D", Duration.ofDays(1));
        desk.forgetting().drain();
        assertThat(kept(home)).as("the part is open").isTrue();
        assertThat(desk.retaining().forget(SampleDesk.OFFICER, home, Why.ASKED_FOR))
                .isEqualTo(new Outcome.Done(List.of(home, part)));
        assertThat(kept(part)).isFalse();
        assertThat(sample.now(part).state()).isEqualTo(SubmissionState.CLOSED);
        assertThat(desk.casebook().picture(part, 0, path)).isEmpty();
        assertThat(desk.store().<List<Ending>>read(tx -> tx.endings().of(part)))
                .extracting(Ending::kind)
                .containsExactly(Ending.Kind.FORGOTTEN);
    }

    @Test
    void theComingWeeksAreForeseen() {
        closed("01-perfect.eml");
        closed("20-out-of-office.eml");
        sample.turnTo(TAKEN.plus(Duration.ofDays(8)));
        assertThat(desk.retaining().stock().weeks())
                .extracting(Retaining.Week::messages)
                .containsExactly(1, 0, 0, 1);
    }
}
