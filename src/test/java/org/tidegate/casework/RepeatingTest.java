package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord.Observed;
import org.tidegate.casework.ReadingDesk.Seen;
import org.tidegate.casework.Repeating.Note;
import org.tidegate.casework.Repeating.Outcome;
import org.tidegate.work.Reading.Line;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.UserId;

/** A test done again on a second kit has a timer, windows and mails of its own. */
class RepeatingTest {

    private static final TestKey FIRST = new TestKey("SS-R8L3", 1);
    private static final TestKey SECOND = new TestKey("SS-R8L3", 2);

    @TempDir
    Path folder;

    private SampleDesk sample;
    private Desk desk;

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder, Instant.parse("2026-05-04T09:20:00Z"));
        desk = sample.desk();
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private static Note note(TestKey after, String timer, String kit, String lot, String mark) {
        return new Note(
                after,
                kit,
                Optional.of(lot).filter(l -> !l.isEmpty()),
                OffsetDateTime.parse("2026-05-04T" + timer + ":00+01:00"),
                Observed.YES,
                Optional.of(mark).filter(m -> !m.isEmpty()));
    }

    private Outcome record(String timer) {
        return desk.repeating().record(SampleDesk.OPERATOR, note(FIRST, timer, "SKERRY-20", "SK2605A", "K4TR"));
    }

    /** Tariq's mail of the sample morning: cassette alone, taken 09:44:40, sent 09:45:50; an hour and minutes later. */
    private static byte[] anHourLater(String subject) throws IOException {
        return Files.readString(Path.of("sample-mailbox/01-perfect.eml"), StandardCharsets.ISO_8859_1)
                .replace("Maren Tollisker", "Tariq Mahfoudi")
                .replace("maren.tollisker", "tariq.mahfoudi")
                .replace("Subject: Tariq Mahfoudi, 06:34, Quay clinic", "Subject: " + subject)
                .replaceAll("2026 07:00:", "2026 10:20:")
                .replace("01-perfect@", "again@")
                .getBytes(StandardCharsets.ISO_8859_1);
    }

    @Test
    void theNextMessageIsAboutTheRepeatAndTheFirstOneStaysWhereItWas() throws IOException {
        SubmissionId first = sample.take("32-missing-id-first.eml");
        assertThat(record("09:54")).isEqualTo(new Outcome.Made(SECOND));
        desk.worker().drain();
        assertThat(sample.now(first).test()).contains("SS-R8L3");
        SubmissionId again = sample.take(anHourLater("Tariq Mahfoudi, Heliport clinic"));
        assertThat(again).isNotEqualTo(first);
        assertThat(sample.now(again).test()).contains("SS-R8L3#2");
        SubmissionView view = desk.casebook().submission(again, sample.now()).orElseThrow();
        assertThat(view.test().orElseThrow().timerStart()).contains(OffsetDateTime.parse("2026-05-04T09:54:00+01:00"));
        assertThat(view.test().orElseThrow().mark()).contains("K4TR");
        assertThat(view.assessment().match().candidates().get(0).weights())
                .anyMatch(w -> w.field().equals("attempt"));
        assertThat(sample.now(first).test()).contains("SS-R8L3");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            'Tariq Mahfoudi, 09:20, Heliport clinic', SS-R8L3
            'Tariq Mahfoudi, 09:55, Heliport clinic', SS-R8L3#2
            'Tariq Mahfoudi, Heliport clinic',        SS-R8L3#2
            """)
    void aStatedTimeTellsTheAttemptsApart(String subject, String test) throws IOException {
        record("09:54");
        assertThat(sample.now(sample.take(anHourLater(subject))).test()).contains(test);
    }

    @ParameterizedTest(name = "{0} {1} {2} {3} {4}")
    @CsvSource(textBlock = """
            SS-0000, 09:54, SKERRY-20, K4TR, no-such-test
            SS-R8L3, 10:21, SKERRY-20, K4TR, time
            SS-R8L3, 09:20, SKERRY-20, K4TR, time
            SS-R8L3, 09:54, '',        K4TR, kit
            SS-R8L3, 09:54, SKERRY-20, ABCDEFGHIJKLM, mark
            """)
    void whatIsNoRecordIsRefused(String ref, String timer, String kit, String mark, String code) {
        assertThat(desk.repeating().record(SampleDesk.OPERATOR, note(new TestKey(ref, 1), timer, kit, "", mark)))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class, r -> assertThat(r.code()).isEqualTo(code));
        assertThat(desk.repeating().attempts("SS-R8L3")).hasSize(1);
    }

    @Test
    void ofTwoWhoRecordAtOnceTheSecondIsRefusedAndAnAuditorAlways() {
        assertThat(desk.repeating().record(SampleDesk.AUDITOR, note(FIRST, "09:54", "SKERRY-20", "", "")))
                .isInstanceOf(Outcome.Forbidden.class);
        assertThat(record("09:54")).isInstanceOf(Outcome.Made.class);
        assertThat(record("09:55"))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class, r -> assertThat(r.code()).isEqualTo("recorded"));
        assertThat(desk.repeating().record(SampleDesk.OPERATOR, note(SECOND, "10:15", "SKERRY-20", "", "K4TR")))
                .as("the mark of the one before")
                .isInstanceOfSatisfying(
                        Outcome.Refused.class, r -> assertThat(r.code()).isEqualTo("same-mark"));
        assertThat(desk.repeating().attempts("SS-R8L3")).hasSize(2);
    }

    @Test
    void aLaterImportOfTheBookLeavesTheRepeat() throws IOException {
        record("09:54");
        BookResult.Read book = (BookResult.Read) BookReader.read(Path.of("sample-mailbox/appointments.csv"));
        assertThat(desk.books().replace(book.book(), UserId.DAEMON)).isZero();
        assertThat(desk.repeating().attempts("SS-R8L3")).hasSize(2);
    }

    @Test
    void twoInvalidInARowAreNamed() throws IOException {
        Seen invalid = new Seen(Line.ABSENT, Line.ABSENT, Optional.empty(), Optional.empty(), true);
        SubmissionId first = sample.take("33-missing-id-second.eml");
        accept(first);
        assertThat(desk.reading().read(SampleDesk.READER, sample.ticket(first), invalid))
                .isInstanceOf(ActionResult.Done.class);
        record("09:54");
        SubmissionId again = sample.take(anHourLater("Tariq Mahfoudi, 09:55, Heliport clinic"));
        accept(again);
        assertThat(desk.reading().read(SampleDesk.READER, sample.ticket(again), invalid))
                .isInstanceOf(ActionResult.Done.class);
        accept(again);
        ActionResult released = desk.reading().release(SampleDesk.READER, sample.ticket(again));
        assertThat(released).as(released.words()).isInstanceOf(ActionResult.Done.class);
        assertThat(desk.outbox().of(again).get(0).text().orElseThrow().text()).contains("laboratory");
    }

    /** Whatever holds it is none of this test's matter. */
    private void accept(SubmissionId id) {
        for (var open :
                desk.casebook().submission(id, sample.now()).orElseThrow().open()) {
            desk.judging()
                    .accept(
                            SampleDesk.LEAD,
                            sample.ticket(id),
                            java.util.List.of(open.code()),
                            Judging.Reason.of("no-bearing"));
        }
        assertThat(sample.now(id).state()).isIn(SubmissionState.TO_READ, SubmissionState.READ);
    }
}
