package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.mailbox.SendResult;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesFolder;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** Who is woken for what, and how often; people are there from 13:00 to 21:00. */
class WakingTest {

    private static final Instant EVENING = Instant.parse("2026-05-03T20:30:00Z");

    @TempDir
    Path folder;

    private SampleDesk sample;

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder.resolve("data"), EVENING, RulesFolder.night(folder.resolve("rules")));
    }

    @AfterEach
    void close() {
        sample.close();
    }

    @Test
    void urgentWordsWakeAtOnceAndAgainUntilSomebodyIsThere() {
        SubmissionId worried = sample.arrives("24-worried.eml");
        Waking waking = sample.desk().waking();
        assertThat(waking.work()).containsExactly(worried);
        assertThat(waking.work()).isEmpty();
        sample.pass(Duration.ofMinutes(59));
        assertThat(waking.work()).isEmpty();
        sample.pass(Duration.ofMinutes(1));
        assertThat(waking.work()).containsExactly(worried);
        sample.pass(Duration.ofMinutes(60));
        sample.desk().claiming().claim(SampleDesk.READER, worried);
        assertThat(waking.work()).isEmpty();
        sample.turnTo(Instant.parse("2026-05-04T12:00:00Z"));
        assertThat(waking.work()).isEmpty();
    }

    @Test
    void aNoticeNamesNobodyAndGoesWithoutDelay() {
        SubmissionId worried = sample.arrives("24-worried.eml");
        sample.desk().waking().work();
        OutboxLetter notice = sample.desk().outbox().of(worried).get(0);
        LetterText text = notice.text().orElseThrow();
        assertThat(notice.kind()).isEqualTo(LetterKind.ON_CALL);
        assertThat(notice.who()).isEqualTo(UserId.POLICY);
        assertThat(text.to()).isEqualTo("on-call@skarrasound.example");
        assertThat(text.subject()).isEqualTo("Someone is needed now (S-1)");
        assertThat(text.text())
                .contains("https://tidegate.skarrasound.example/submissions/1", "999\u00a0/\u00a0112")
                .doesNotContain("Rory", "Kinlochan", "SS-J3B7", "tarnpost");
        assertThat(sample.desk()
                        .sending(m -> new SendResult.Accepted())
                        .work()
                        .orElseThrow()
                        .state())
                .isEqualTo(OutboxState.SENT);
    }

    @Test
    void theWorriedPersonComesFirstAndGetsNoRequest() {
        sample.arrives("10-read-early.eml");
        sample.arrives("12-sent-late.eml");
        SubmissionId worried = sample.arrives("24-worried.eml");
        sample.desk().unattended().work();
        assertThat(sample.desk().casebook().queue(sample.now()).get(0).id()).isEqualTo(worried);
        assertThat(sample.desk().outbox().of(worried)).isEmpty();
    }

    @Test
    void whatIsNeededBeforeTheShiftWakesToo() throws IOException {
        String book = Files.readString(Path.of("sample-mailbox/appointments.csv"))
                .replaceFirst("(?m)^(SS-2K7Q,.*,)$", "$12026-05-04T12:30:00+01:00")
                .replaceFirst("(?m)^(SS-3M1D,.*,)$", "$12026-05-04T13:00:00+01:00");
        Path file = Files.writeString(folder.resolve("book.csv"), book);
        sample.desk().books().replace(((BookResult.Read) BookReader.read(file)).book(), UserId.DAEMON);
        SubmissionId before = sample.arrives("01-perfect.eml");
        sample.arrives("02-stated-only.eml");
        sample.arrives("03-spanish.eml");
        assertThat(sample.desk().waking().work()).containsExactly(before);
        LetterText text = sample.desk().outbox().of(before).get(0).text().orElseThrow();
        assertThat(text.text()).contains("needed by 12:30", "begins at 13:00");
        sample.turnTo(Instant.parse("2026-05-04T11:31:00Z"));
        assertThat(sample.desk().waking().work()).isEmpty();
    }

    @Test
    void whileSomebodyIsThereNobodyIsWokenUnlessTheRulesSayOtherwise() throws IOException {
        try (SampleDesk day = new SampleDesk(folder.resolve("day"), EVENING, Rules.bundled())) {
            day.arrives("24-worried.eml");
            assertThat(day.desk().waking().work()).isEmpty();
        }
        Rules always = RulesFolder.copyTo(folder.resolve("always"))
                .edit("hours.yaml", "in_hours: false", "in_hours: true")
                .rules();
        try (SampleDesk day = new SampleDesk(folder.resolve("always-day"), EVENING, always)) {
            assertThat(List.of(day.arrives("24-worried.eml")))
                    .isEqualTo(day.desk().waking().work());
        }
    }

    @Test
    void theAcknowledgementPromisesForTheMorning() {
        SubmissionId id = sample.arrives("01-perfect.eml");
        sample.desk().unattended().work();
        Optional<LetterText> text = sample.desk().outbox().of(id).get(0).text();
        assertThat(text.orElseThrow().text()).contains("You will hear from us by 13:30");
    }
}
