package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.ActionResult.Done;
import org.tidegate.casework.ActionResult.Refused;
import org.tidegate.casework.Judging.Reason;
import org.tidegate.casework.Splitting.Pick;
import org.tidegate.casework.Splitting.Place;
import org.tidegate.casework.Splitting.Why;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.finding.PictureFinding;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.User;

/** One message among several tests: each has its own pictures, nobody another's, and a wrong cut is undone by relinking. */
class SplittingTest {

    private static final TestKey WRITER = new TestKey(FamilyMail.WRITER, 1);
    private static final TestKey OTHER = new TestKey(FamilyMail.OTHER, 1);

    @TempDir
    Path folder;

    private SampleDesk sample;
    private Desk desk;
    private SubmissionId home;
    private Pick own;
    private Pick others;

    @BeforeEach
    void take() throws IOException {
        sample = new SampleDesk(folder, Instant.parse("2026-05-04T06:10:00Z"));
        desk = sample.desk();
        home = sample.take(FamilyMail.raw());
        List<String> paths = pictures(home);
        assertThat(paths).hasSize(2);
        own = new Pick(0, paths.get(0));
        others = new Pick(0, paths.get(1));
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private SubmissionView view(SubmissionId id) {
        return desk.casebook().submission(id, sample.now()).orElseThrow();
    }

    private List<String> pictures(SubmissionId id) {
        return view(id).messages().stream()
                .flatMap(m -> m.findings().pictures().stream())
                .map(PictureFinding::path)
                .toList();
    }

    private ActionResult split(User who, Ticket ticket, TestKey test, Map<Pick, Place> places) {
        return desk.splitting().split(who, ticket, test, places, Why.ONE_MAIL_FOR_SEVERAL);
    }

    private SubmissionId split() {
        ActionResult done = split(SampleDesk.OPERATOR, sample.ticket(home), OTHER, Map.of(others, Place.THERE));
        assertThat(done).as(done.words()).isInstanceOf(Done.class);
        return view(home).kin().get(0).id();
    }

    private static void refused(ActionResult result, String code) {
        assertThat(result)
                .as(result.words())
                .isInstanceOfSatisfying(Refused.class, r -> assertThat(r.code()).isEqualTo(code));
    }

    private String ledger() {
        return desk.store().read(tx -> tx.ledger().leaves(0, 10_000)).stream()
                .map(b -> new String(b, StandardCharsets.UTF_8))
                .reduce("", (a, b) -> a + "\n" + b);
    }

    @Test
    void eachTestIsAssessedForItselfWithItsOwnPictures() {
        SubmissionId part = split();
        assertThat(part).hasToString(home + ".1");
        assertThat(sample.now(home).test()).contains(FamilyMail.WRITER);
        assertThat(sample.now(part).test()).contains(FamilyMail.OTHER);
        assertThat(sample.now(part).state()).isEqualTo(SubmissionState.TO_READ);
        assertThat(pictures(home)).containsExactly(own.path());
        assertThat(pictures(part)).containsExactly(others.path());
        assertThat(desk.casebook().picture(home, 0, others.path())).isEmpty();
        assertThat(desk.casebook().picture(part, 0, own.path())).isEmpty();
        assertThat(desk.casebook().picture(part, 0, others.path())).isPresent();
        assertThat(view(part).kin()).extracting(Submission::id).containsExactly(home);
        assertThat(Kept.messages(desk)).hasSize(1);
        assertThat(desk.casebook().find(part.toString())).containsExactly(part);
        assertThat(ledger())
                .contains("\"split\"", "one-mail-for-several", "\"part\":\"" + part + "\"", "\"who\":\"ada\"");
        Kept.ledger(desk.store());
    }

    @Test
    void aPictureThatShowsBothGoesWithBoth() {
        ActionResult done = split(SampleDesk.OPERATOR, sample.ticket(home), OTHER, Map.of(others, Place.BOTH));
        assertThat(done).as(done.words()).isInstanceOf(Done.class);
        assertThat(pictures(home)).containsExactly(own.path(), others.path());
        assertThat(pictures(view(home).kin().get(0).id())).containsExactly(others.path());
    }

    @Test
    void whatDoesNotFitIsRefusedAndChangesNothing() {
        Ticket ticket = sample.ticket(home);
        assertThat(split(SampleDesk.AUDITOR, ticket, OTHER, Map.of(others, Place.THERE)))
                .isInstanceOf(ActionResult.Forbidden.class);
        refused(
                split(SampleDesk.OPERATOR, ticket, new TestKey("SS-0000", 1), Map.of(others, Place.THERE)),
                "no-such-test");
        refused(split(SampleDesk.OPERATOR, ticket, WRITER, Map.of(others, Place.THERE)), "same-test");
        refused(split(SampleDesk.OPERATOR, ticket, OTHER, Map.of()), "no-pictures");
        refused(
                split(SampleDesk.OPERATOR, ticket, OTHER, Map.of(own, Place.THERE, others, Place.THERE)),
                "no-pictures");
        refused(
                split(SampleDesk.OPERATOR, ticket, OTHER, Map.of(new Pick(3, "../../keys"), Place.THERE)),
                "no-such-picture");
        assertThat(desk.claiming().claim(SampleDesk.OTHER_OPERATOR, home)).isInstanceOf(Done.class);
        assertThat(split(SampleDesk.OPERATOR, sample.ticket(home), OTHER, Map.of(others, Place.THERE)))
                .isInstanceOf(ActionResult.Taken.class);
        assertThat(view(home).kin()).isEmpty();
        assertThat(pictures(home)).hasSize(2);
        assertThat(ledger()).doesNotContain("\"split\"");
    }

    @Test
    void ofTwoWhoSplitAtOnceTheSecondIsRefused() {
        Ticket shown = sample.ticket(home);
        split();
        assertThat(split(SampleDesk.OTHER_OPERATOR, shown, OTHER, Map.of(others, Place.THERE)))
                .isInstanceOf(ActionResult.Stale.class);
        refused(
                split(SampleDesk.OTHER_OPERATOR, sample.ticket(home), OTHER, Map.of(own, Place.BOTH)),
                "has-submission");
        assertThat(view(home).kin()).hasSize(1);
    }

    @Test
    void aTestThatHasItsOwnMailIsNotAnsweredTwice() {
        SubmissionId direct = sample.take("01-perfect.eml");
        assertThat(sample.now(direct).test()).contains(FamilyMail.OTHER);
        refused(split(SampleDesk.OPERATOR, sample.ticket(home), OTHER, Map.of(others, Place.THERE)), "has-submission");
    }

    @Test
    void linkingAPartBackBringsItsPicturesHome() {
        SubmissionId part = split();
        Ticket shown = sample.ticket(home);
        ActionResult back = desk.judging().relink(SampleDesk.OPERATOR, sample.ticket(part), WRITER, Reason.of("other"));
        assertThat(back)
                .as(back.words())
                .isInstanceOfSatisfying(
                        Done.class, d -> assertThat(d.submission().id()).isEqualTo(home));
        assertThat(desk.casebook().submission(part, sample.now())).isEmpty();
        assertThat(pictures(home)).containsExactly(own.path(), others.path());
        assertThat(desk.judging().setAside(SampleDesk.OTHER_OPERATOR, shown, Reason.of("other")))
                .isInstanceOf(ActionResult.Stale.class);
        SubmissionId again = split();
        assertThat(again).as("numbers are never used again").hasToString(home + ".2");
    }

    @Test
    void linkingTheHomeToThePartsTestBringsThePartHome() {
        SubmissionId part = split();
        ActionResult one = desk.judging().relink(SampleDesk.OPERATOR, sample.ticket(home), OTHER, Reason.of("other"));
        assertThat(one).as(one.words()).isInstanceOf(Done.class);
        assertThat(desk.casebook().submission(part, sample.now())).isEmpty();
        assertThat(sample.now(home).test()).contains(FamilyMail.OTHER);
        assertThat(pictures(home)).hasSize(2);
    }

    @Test
    void aPartIsLinkedElsewhereByItself() {
        SubmissionId part = split();
        TestKey third = new TestKey("SS-9V3X", 1);
        ActionResult done = desk.judging().relink(SampleDesk.OPERATOR, sample.ticket(part), third, Reason.of("other"));
        assertThat(done).as(done.words()).isInstanceOf(Done.class);
        assertThat(sample.now(part).test()).contains("SS-9V3X");
        assertThat(sample.now(home).test()).contains(FamilyMail.WRITER);
        assertThat(pictures(part)).containsExactly(others.path());
    }

    @Test
    void laterMailOfThatPersonJoinsThePart() {
        SubmissionId part = split();
        assertThat(sample.take("34-already-submitted.eml")).isEqualTo(part);
        assertThat(pictures(part)).hasSize(2).contains(others.path());
        assertThat(pictures(home)).containsExactly(own.path());
        assertThat(view(part).assessment().discrepancies()).noneMatch(d -> d.code() == DiscrepancyCode.PHOTO_REUSED);
    }

    @Test
    void anAnswerInTheThreadThatNamesNobodyJoinsNeither() throws IOException {
        SubmissionId part = split();
        String mail = Files.readString(Path.of("sample-mailbox/33-missing-id-second.eml"), StandardCharsets.ISO_8859_1)
                .replace("32-missing-id-first@tarnpost.example", "02-stated-only@tarnpost.example")
                .replace("tariq.mahfoudi@tarnpost.example", "someone@brinemail.example")
                .replace("Tariq Mahfoudi", "Card")
                .replace("09:20, Heliport clinic", "as asked");
        SubmissionId answer = sample.take(mail.getBytes(StandardCharsets.ISO_8859_1));
        assertThat(answer).isNotIn(home, part);
    }

    @Test
    void aNewBookAndTheOtherOnesClosingLeaveThePartItsOwn() {
        SubmissionId part = split();
        assertThat(desk.judging().setAside(SampleDesk.OPERATOR, sample.ticket(home), Reason.of("other")))
                .isInstanceOf(Done.class);
        String lot = view(part).test().flatMap(t -> t.lot()).orElseThrow();
        assertThat(desk.registers().quarantine(SampleDesk.READER, lot, "leaking buffer"))
                .isEqualTo(new Registering.Entry.Made(1));
        desk.worker().drain();
        assertThat(sample.now(part).state()).isEqualTo(SubmissionState.HELD);
        assertThat(sample.now(home).state()).isEqualTo(SubmissionState.CLOSED);
        assertThat(pictures(part)).containsExactly(others.path());
        refused(desk.judging().relink(SampleDesk.OPERATOR, sample.ticket(part), WRITER, Reason.of("other")), "state");
    }

    @Test
    void anotherPersonWhoSendsThePartsPhotoIsFound() {
        split();
        SubmissionId stranger = sample.take("46-reused.eml");
        assertThat(view(stranger).open()).extracting(d -> d.code()).contains(DiscrepancyCode.PHOTO_REUSED);
    }
}
