package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.booking.AppointmentBook;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;
import org.tidegate.booking.TestRecord.Observed;
import org.tidegate.casework.SilentTest.Step;
import org.tidegate.mailbox.SendResult;
import org.tidegate.store.Observation;
import org.tidegate.work.LetterText;
import org.tidegate.work.OutboxState;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** Who is shown, who is reminded, and what the observer wrote down. */
class NotHeardFromTest {

    /** Timer 09:04 BST: photograph 09:24–09:34, send by 09:54. */
    private static final TestKey TIMED = new TestKey("SS-N2D6", 1);

    /** No timer in the book; slot 07:15–07:30 BST. */
    private static final TestKey UNTIMED = new TestKey("SS-9V3X", 1);

    /** Its timer is 06:34 BST, and sample 01 is its submission. */
    private static final TestKey HEARD = new TestKey("SS-2K7Q", 1);

    @TempDir
    Path folder;

    private SampleDesk sample;
    private Desk desk;

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder, Instant.parse("2026-05-04T08:30:00Z"));
        desk = sample.desk();
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private Optional<SilentTest> silent(TestKey key) {
        return desk.notHeardFrom().list().stream()
                .filter(s -> s.test().key().equals(key))
                .findFirst();
    }

    private TestRecord record(TestKey key) {
        return desk.store().<AppointmentBook>read(tx -> tx.tests().book()).tests().stream()
                .filter(t -> t.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0} at {1}: {2}")
    @CsvSource(textBlock = """
            SS-N2D6, 2026-05-04T08:23:59Z, absent
            SS-N2D6, 2026-05-04T08:24:00Z, REMIND
            SS-N2D6, 2026-05-04T08:48:59Z, REMIND
            SS-N2D6, 2026-05-04T08:49:00Z, OVER
            SS-N2D6, 2026-05-05T08:53:59Z, OVER
            SS-N2D6, 2026-05-05T08:54:00Z, absent
            SS-9V3X, 2026-05-04T06:29:59Z, absent
            SS-9V3X, 2026-05-04T06:30:00Z, OBSERVE
            SS-9V3X, 2026-05-04T07:24:59Z, OBSERVE
            SS-9V3X, 2026-05-04T07:25:00Z, OVER
            SS-63TY, 2026-05-04T10:30:00Z, NOT_OBSERVED
            SS-38WM, 2026-05-04T10:00:00Z, absent
            """)
    void whatToDoAtWhatTime(String ref, Instant now, String step) {
        sample.turnTo(now);
        assertThat(silent(new TestKey(ref, 1)).map(s -> s.step().name()).orElse("absent"))
                .isEqualTo(step);
    }

    @Test
    void whoSentSomethingIsNotInTheListAndNotReminded() {
        sample.turnTo(Instant.parse("2026-05-04T07:50:00Z"));
        SubmissionId id = sample.take("32-missing-id-first.eml");
        TestKey heard = key(sample.now(id).test().orElseThrow());
        sample.turnTo(record(heard).timerStart().orElseThrow().toInstant().plus(Duration.ofMinutes(25)));
        assertThat(silent(heard)).isEmpty();
        assertThat(desk.reminding().drafts(List.of(heard))).isEmpty();
        assertThat(desk.reminding()
                        .remind(SampleDesk.OPERATOR, List.of(heard))
                        .get(heard)
                        .letter())
                .isEmpty();
    }

    private static TestKey key(String written) {
        return new TestKey(written, 1);
    }

    @Test
    void theReminderTellsTheClockTimesAndGoesOnce() {
        Reminding.Draft draft = desk.reminding().drafts(List.of(TIMED)).get(0);
        assertThat(draft.text()).contains("09:24", "09:34", "09:54", "999\u00a0/\u00a0112", "+44 1632 960110");
        assertThat(draft.to()).isEqualTo(record(TIMED).appointment().email().orElseThrow());
        assertThat(draft.notAfter()).isEqualTo(Instant.parse("2026-05-04T08:49:00Z"));
        long letter = desk.reminding()
                .remind(SampleDesk.OPERATOR, List.of(TIMED))
                .get(TIMED)
                .letter()
                .orElseThrow();
        assertThat(silent(TIMED).orElseThrow().step()).isEqualTo(Step.REMINDED);
        assertThat(desk.reminding()
                        .remind(SampleDesk.OTHER_OPERATOR, List.of(TIMED, TIMED))
                        .get(TIMED)
                        .letter())
                .isEmpty();
        assertThat(desk.outbox().inState(OutboxState.WAITING)).hasSize(1);
        LetterText text = desk.outbox().find(letter).orElseThrow().text().orElseThrow();
        assertThat(text.subject())
                .doesNotContain(record(TIMED).appointment().familyName())
                .contains("SS-N2D6");
    }

    @Test
    void aReminderThatWasCalledBackMayBeWrittenAgain() {
        long letter = desk.reminding()
                .remind(SampleDesk.OPERATOR, List.of(TIMED))
                .get(TIMED)
                .letter()
                .orElseThrow();
        desk.outbox().recall(SampleDesk.OPERATOR, letter);
        assertThat(silent(TIMED).orElseThrow().step()).isEqualTo(Step.REMIND);
        assertThat(desk.reminding()
                        .remind(SampleDesk.OPERATOR, List.of(TIMED))
                        .get(TIMED)
                        .letter())
                .isPresent();
    }

    @Test
    void whatCameWhileTheReminderWaitedMakesItNeedless() {
        sample.turnTo(Instant.parse("2026-05-04T06:10:00Z"));
        long letter = desk.reminding()
                .remind(SampleDesk.OPERATOR, List.of(HEARD))
                .get(HEARD)
                .letter()
                .orElseThrow();
        SubmissionId id = sample.take("01-perfect.eml");
        assertThat(sample.now(id).test()).contains(HEARD.toString());
        sample.pass(Duration.ofMinutes(1));
        List<String> sent = new ArrayList<>();
        desk.sending(mail -> {
                    sent.add("sent");
                    return new SendResult.Accepted();
                })
                .work();
        assertThat(sent).isEmpty();
        assertThat(desk.outbox().find(letter).orElseThrow().state()).isEqualTo(OutboxState.RECALLED);
    }

    @Test
    void anAuditorRemindsNobodyAndWritesNothingDown() {
        assertThat(desk.reminding()
                        .remind(SampleDesk.AUDITOR, List.of(TIMED))
                        .get(TIMED)
                        .letter())
                .isEmpty();
        assertThat(desk.observing().record(SampleDesk.AUDITOR, timer(TIMED, "2026-05-04T08:00:00Z")))
                .isInstanceOf(Observing.Entry.Forbidden.class);
        assertThat(desk.outbox().inState(OutboxState.WAITING)).isEmpty();
    }

    private static Observation timer(TestKey test, String start) {
        return new Observation(test, Optional.of(OffsetDateTime.parse(start)), Observed.YES, Optional.empty());
    }

    @Test
    void theObserversRecordMakesTheReminderPossibleAndOutlivesImports() {
        sample.turnTo(Instant.parse("2026-05-04T06:45:00Z"));
        assertThat(silent(UNTIMED).orElseThrow().step()).isEqualTo(Step.OBSERVE);
        assertThat(desk.observing().record(SampleDesk.OPERATOR, timer(UNTIMED, "2026-05-04T06:20:00Z")))
                .isInstanceOf(Observing.Entry.Made.class);
        assertThat(silent(UNTIMED).orElseThrow().step()).isEqualTo(Step.REMIND);
        AppointmentBook book =
                desk.store().<AppointmentBook>read(tx -> tx.tests().book());
        List<TestRecord> bare = book.tests().stream()
                .map(t -> t.key().equals(UNTIMED) ? expiredAndWithoutTimer(t) : t)
                .toList();
        desk.books().replace(new AppointmentBook(bare), UserId.DAEMON);
        assertThat(record(UNTIMED).timerStart()).contains(OffsetDateTime.parse("2026-05-04T06:20:00Z"));
        assertThat(record(UNTIMED).observed()).isEqualTo(Observed.YES);
        assertThat(silent(UNTIMED).orElseThrow().step()).isEqualTo(Step.REMIND);
    }

    private static TestRecord expiredAndWithoutTimer(TestRecord t) {
        return new TestRecord(
                t.appointment(),
                t.attempt(),
                t.kit(),
                t.lot(),
                Optional.of(LocalDate.parse("2026-05-03")),
                Optional.empty(),
                Observed.UNSTATED,
                t.mark());
    }

    @Test
    void anImportOrAnObservationAssessesAgainAndOverwritesNothing() {
        sample.turnTo(Instant.parse("2026-05-04T08:50:00Z"));
        SubmissionId id = sample.take("32-missing-id-first.eml");
        TestKey key = key(sample.now(id).test().orElseThrow());
        int first = sample.now(id).assessment();
        desk.observing().record(SampleDesk.OPERATOR, timer(key, "2026-05-04T08:16:00Z"));
        desk.worker().drain();
        assertThat(sample.now(id).assessment()).isEqualTo(first + 1);
        AppointmentBook book =
                desk.store().<AppointmentBook>read(tx -> tx.tests().book());
        List<TestRecord> moved = book.tests().stream()
                .map(t -> t.key().equals(key) ? expiredAndWithoutTimer(t) : t)
                .toList();
        desk.books().replace(new AppointmentBook(moved), UserId.DAEMON);
        desk.worker().drain();
        assertThat(sample.now(id).assessment()).isEqualTo(first + 2);
        List<Integer> numbers = desk.casebook().submission(id, sample.now()).orElseThrow().history().stream()
                .map(p -> p.number())
                .toList();
        assertThat(numbers).containsExactly(first + 2, first + 1, first);
        assertThat(record(key).timerStart()).contains(OffsetDateTime.parse("2026-05-04T08:16:00Z"));
    }

    @Test
    void whoMayHaveWrittenIsLookedAtFirst() {
        byte[] stranger = ("From: " + record(TIMED).appointment().email().orElseThrow()
                        + "\r\nTo: intake@skarrasound.example\r\n"
                        + "Subject: hello\r\nDate: Mon, 4 May 2026 08:20:00 +0000\r\nMessage-ID: <w1@tarnpost.example>\r\n\r\n"
                        + "A question: where do I find the bus?\r\n")
                .getBytes(StandardCharsets.US_ASCII);
        SubmissionId id = sample.take(stranger);
        if (sample.now(id).test().isEmpty()) {
            SilentTest found = silent(TIMED).orElseThrow();
            assertThat(found.step()).isEqualTo(Step.LOOK);
            assertThat(found.perhaps()).contains(id);
        } else {
            assertThat(silent(TIMED)).isEmpty();
        }
    }

    @Test
    void nonsenseIsRefused() {
        assertThat(desk.observing()
                        .record(SampleDesk.OPERATOR, timer(new TestKey("SS-0000", 1), "2026-05-04T06:20:00Z")))
                .isInstanceOf(Observing.Entry.Refused.class);
        assertThat(desk.observing().record(SampleDesk.OPERATOR, timer(TIMED, "2026-05-04T19:20:00Z")))
                .isInstanceOf(Observing.Entry.Refused.class);
        assertThat(desk.observing()
                        .record(
                                SampleDesk.OPERATOR,
                                new Observation(
                                        TIMED, Optional.empty(), Observed.YES, Optional.of("far too long for a mark"))))
                .isInstanceOf(Observing.Entry.Refused.class);
    }
}
