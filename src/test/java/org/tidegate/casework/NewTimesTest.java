package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.casework.ActionResult.Done;
import org.tidegate.casework.Replying.Edited;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/** Honest new times: one at a time, and never to whom no machine may write. */
class NewTimesTest {

    @TempDir
    Path folder;

    private SampleDesk sample;
    private Desk desk;

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder, Instant.parse("2026-05-04T07:50:00Z"));
        desk = sample.desk();
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private ActionResult tell(SubmissionId id, Instant time) {
        Ticket ticket = sample.ticket(id);
        return desk.newTimes().tell(SampleDesk.OPERATOR, Map.of(ticket, time)).get(ticket);
    }

    @Test
    void toldOnceUntilTheToldTimeIsOver() {
        SubmissionId id = sample.take("32-missing-id-first.eml");
        Instant told = sample.now().plus(Duration.ofMinutes(90));
        NewTimes.Draft draft = desk.newTimes().drafts(Map.of(id, told)).get(0);
        assertThat(draft.text()).contains("10:20", "999\u00a0/\u00a0112", "+44 1632 960110");
        assertThat(tell(id, told)).isInstanceOf(Done.class);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.HELD);
        OutboxLetter letter = desk.outbox().of(id).get(0);
        assertThat(letter.kind()).isEqualTo(LetterKind.NEW_TIME);
        assertThat(letter.notAfter()).contains(told);
        assertThat(letter.text().orElseThrow().subject()).doesNotContain("Tariq");
        assertThat(tell(id, told.plusSeconds(600))).isInstanceOf(ActionResult.Refused.class);
        assertThat(desk.newTimes().drafts(Map.of(id, told.plusSeconds(600)))).isEmpty();
        sample.turnTo(told);
        assertThat(tell(id, told.plus(Duration.ofMinutes(30)))).isInstanceOf(Done.class);
    }

    @Test
    void aLetterThatWasCalledBackMayBeWrittenAgainAndTheSubmissionStays() {
        SubmissionId id = sample.take("32-missing-id-first.eml");
        Instant told = sample.now().plus(Duration.ofMinutes(90));
        long letter = ((Done) tell(id, told)).letter().orElseThrow();
        Replying.Draft draft = desk.replying().draft(id, Optional.empty()).orElseThrow();
        desk.replying().send(SampleDesk.OPERATOR, draft.ticket(), Edited.asIs(draft));
        desk.outbox().recall(SampleDesk.OPERATOR, letter);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.WAITING);
        assertThat(tell(id, told)).isInstanceOf(ActionResult.Refused.class);
    }

    @Test
    void theUrgentTheAnsweredAndTheMachineAreNotPutOff() {
        Instant told = sample.now().plus(Duration.ofMinutes(90));
        SubmissionId urgent = sample.take("24-worried.eml");
        assertThat(tell(urgent, told)).isInstanceOf(ActionResult.Refused.class);
        SubmissionId id = sample.take("32-missing-id-first.eml");
        assertThat(tell(id, sample.now())).isInstanceOf(ActionResult.Refused.class);
        assertThat(tell(id, sample.now().plus(Duration.ofDays(2)))).isInstanceOf(ActionResult.Refused.class);
        Ticket ticket = sample.ticket(id);
        assertThat(desk.newTimes()
                        .tell(SampleDesk.AUDITOR, Map.of(ticket, told))
                        .get(ticket))
                .isInstanceOf(ActionResult.Forbidden.class);
        assertThat(desk.newTimes().drafts(Map.of(urgent, told, new SubmissionId(999), told)))
                .isEqualTo(List.of());
        assertThat(desk.outbox().of(id)).isEmpty();
    }

    @Test
    void anotherDayIsNamed() {
        SubmissionId id = sample.take("32-missing-id-first.eml");
        Instant tomorrow = Instant.parse("2026-05-05T06:00:00Z");
        assertThat(desk.newTimes().drafts(Map.of(id, tomorrow)).get(0).text()).contains("2026-05-05 07:00");
    }
}
