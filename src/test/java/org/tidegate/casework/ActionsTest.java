package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.ActionResult.Done;
import org.tidegate.casework.Judging.Reason;
import org.tidegate.casework.ReadingDesk.Seen;
import org.tidegate.casework.Replying.Draft;
import org.tidegate.casework.Replying.Edited;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.Reading.Line;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/** What people do to submissions: the right, the shown state, the claim, and one event for each. */
class ActionsTest {

    private static final Seen NEGATIVE = new Seen(Line.PRESENT, Line.ABSENT, Optional.empty(), Optional.empty(), true);

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

    private List<String> events() {
        return desk.store().read(tx -> tx.ledger().leaves(0, 10_000)).stream()
                .map(b -> new String(b, StandardCharsets.UTF_8))
                .toList();
    }

    @Test
    void theSuggestedReplyIsSentAsItIsAndCalledBackInTime() {
        SubmissionId id = sample.take("32-missing-id-first.eml");
        Draft draft = desk.replying().draft(id, Optional.empty()).orElseThrow();
        assertThat(draft.text()).contains("ID", "999\u00a0/\u00a0112", "+44 1632 960110");
        ActionResult sent = desk.replying().send(SampleDesk.OPERATOR, draft.ticket(), Edited.asIs(draft));
        assertThat(sent).isInstanceOf(Done.class);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.WAITING);
        long letter = ((Done) sent).letter().orElseThrow();
        OutboxLetter queued = desk.outbox().find(letter).orElseThrow();
        assertThat(queued.kind()).isEqualTo(LetterKind.REQUEST);
        assertThat(queued.notBefore()).isEqualTo(sample.now().plus(Duration.ofSeconds(30)));
        assertThat(queued.text().orElseThrow().inReplyTo()).isPresent();
        assertThat(desk.outbox().recall(SampleDesk.OPERATOR, letter)).isInstanceOf(Done.class);
        assertThat(desk.outbox().find(letter).orElseThrow().state()).isEqualTo(OutboxState.RECALLED);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.HELD);
        assertThat(events()).anyMatch(e -> e.contains("letter-queued")).anyMatch(e -> e.contains("letter-recalled"));
    }

    @Test
    void aStaleFormIsRefusedAndNobodyIsAnsweredTwice() {
        SubmissionId id = sample.take("32-missing-id-first.eml");
        Draft draft = desk.replying().draft(id, Optional.empty()).orElseThrow();
        assertThat(desk.replying().send(SampleDesk.OPERATOR, draft.ticket(), Edited.asIs(draft)))
                .isInstanceOf(Done.class);
        ActionResult second = desk.replying().send(SampleDesk.OTHER_OPERATOR, draft.ticket(), Edited.asIs(draft));
        assertThat(second).isInstanceOf(ActionResult.Stale.class);
        assertThat(second.words()).contains("Nothing was done");
        assertThat(desk.outbox().of(id)).hasSize(1);
    }

    @Test
    void aClaimKeepsOthersAwayUntilItLapses() {
        SubmissionId id = sample.take("32-missing-id-first.eml");
        assertThat(desk.claiming().claim(SampleDesk.OPERATOR, id)).isInstanceOf(Done.class);
        assertThat(desk.claiming().claim(SampleDesk.OTHER_OPERATOR, id)).isInstanceOf(ActionResult.Taken.class);
        Draft draft = desk.replying().draft(id, Optional.empty()).orElseThrow();
        assertThat(desk.replying().send(SampleDesk.OTHER_OPERATOR, draft.ticket(), Edited.asIs(draft)))
                .isInstanceOf(ActionResult.Taken.class);
        sample.pass(Duration.ofMinutes(5));
        assertThat(desk.claiming().claim(SampleDesk.OTHER_OPERATOR, id)).isInstanceOf(Done.class);
    }

    @Test
    void anAuditorChangesNothing() {
        SubmissionId id = sample.take("32-missing-id-first.eml");
        Draft draft = desk.replying().draft(id, Optional.empty()).orElseThrow();
        int before = events().size();
        Ticket ticket = sample.ticket(id);
        assertThat(List.of(
                        desk.claiming().claim(SampleDesk.AUDITOR, id),
                        desk.replying().send(SampleDesk.AUDITOR, ticket, Edited.asIs(draft)),
                        desk.judging()
                                .accept(
                                        SampleDesk.AUDITOR,
                                        ticket,
                                        List.of(DiscrepancyCode.NO_ID),
                                        Reason.of("no-bearing")),
                        desk.judging().setAside(SampleDesk.AUDITOR, ticket, Reason.of("other")),
                        desk.judging().relink(SampleDesk.AUDITOR, ticket, new TestKey("SK-1", 1), Reason.of("other")),
                        desk.reading().read(SampleDesk.AUDITOR, ticket, NEGATIVE),
                        desk.reading().release(SampleDesk.AUDITOR, ticket)))
                .allSatisfy(r -> assertThat(r).isInstanceOf(ActionResult.Forbidden.class));
        assertThat(events()).hasSize(before);
        assertThat(desk.registers().quarantine(SampleDesk.AUDITOR, "L1", "leaks"))
                .isInstanceOf(Registering.Entry.Forbidden.class);
    }

    @Test
    void anEditedTextMayNotLoseWhatEveryLetterCarries() {
        SubmissionId id = sample.take("32-missing-id-first.eml");
        Draft d = desk.replying().draft(id, Optional.empty()).orElseThrow();
        assertThat(desk.replying()
                        .problems(id, new Edited(d.to().orElseThrow(), "en", "Hello {name}", d.notAfter(), d.then())))
                .hasSize(4)
                .anyMatch(p -> p.contains("placeholder"))
                .anyMatch(p -> p.contains("999\u00a0/\u00a0112"));
        Edited toAStranger = new Edited("else@crew.example", "en", d.text(), d.notAfter(), d.then());
        assertThat(desk.replying().send(SampleDesk.OPERATOR, d.ticket(), toAStranger))
                .isInstanceOfSatisfying(
                        ActionResult.Refused.class, r -> assertThat(r.code()).isEqualTo("no-address"));
        sample.turnTo(Instant.parse("2026-05-04T12:00:00Z"));
        assertThat(desk.replying().send(SampleDesk.OPERATOR, d.ticket(), Edited.asIs(d)))
                .isInstanceOfSatisfying(
                        ActionResult.Refused.class, r -> assertThat(r.code()).isEqualTo("too-late"));
    }

    @Test
    void whatIsAcceptedIsReadReleasedAndAmended() {
        SubmissionId id = sample.take("32-missing-id-first.eml");
        ActionResult accepted = desk.judging()
                .accept(
                        SampleDesk.READER,
                        sample.ticket(id),
                        List.of(DiscrepancyCode.NO_ID),
                        Reason.of("identity-confirmed"));
        assertThat(accepted).as(accepted.words()).isInstanceOf(Done.class);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.TO_READ);
        assertThat(desk.reading().read(SampleDesk.OPERATOR, sample.ticket(id), NEGATIVE))
                .isInstanceOf(ActionResult.Forbidden.class);
        ActionResult read = desk.reading().read(SampleDesk.READER, sample.ticket(id), NEGATIVE);
        assertThat(read).as(read.words()).isInstanceOf(Done.class);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.READ);
        ActionResult released = desk.reading().release(SampleDesk.READER, sample.ticket(id));
        assertThat(released).as(released.words()).isInstanceOf(Done.class);
        OutboxLetter letter = desk.outbox().of(id).get(0);
        assertThat(letter.kind()).isEqualTo(LetterKind.RESULT);
        assertThat(letter.text().orElseThrow().text()).contains("negative").contains("does not prove");
        assertThat(letter.text().orElseThrow().subject()).doesNotContainIgnoringCase("negative");
        assertThat(String.join("\n", events())).doesNotContainIgnoringCase("negative");
        assertThat(desk.reading().withdraw(SampleDesk.LEAD, sample.ticket(id), "our-fault"))
                .as("nothing went out yet")
                .isInstanceOf(ActionResult.Refused.class);
    }

    @Test
    void aTranscriptionThatDiffersHoldsTheSubmission() {
        SubmissionId id = sample.take("01-perfect.eml");
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.TO_READ);
        Seen other = new Seen(Line.PRESENT, Line.ABSENT, Optional.of("QX-999"), Optional.empty(), true);
        assertThat(desk.reading().read(SampleDesk.READER, sample.ticket(id), other))
                .isInstanceOf(Done.class);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.HELD);
        ActionResult accepted = desk.judging()
                .accept(
                        SampleDesk.LEAD,
                        sample.ticket(id),
                        List.of(DiscrepancyCode.LOT_DIFFERS),
                        Reason.of("observer-confirms"));
        assertThat(accepted).as(accepted.words()).isInstanceOf(Done.class);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.READ);
    }

    @Test
    void relinkingAssessesAnewForTheOtherTest() {
        SubmissionId id = sample.take("26-no-appointment.eml");
        String before = sample.now(id).test().orElse("none");
        TestKey other =
                desk.store().read(tx -> tx.tests().book()).tests().get(0).key();
        ActionResult linked =
                desk.judging().relink(SampleDesk.OPERATOR, sample.ticket(id), other, Reason.of("identity-confirmed"));
        assertThat(linked).as(linked.words()).isInstanceOf(Done.class);
        assertThat(before).isEqualTo("none");
        assertThat(sample.now(id).test()).contains(other.toString());
        assertThat(desk.casebook()
                        .submission(id, sample.now())
                        .orElseThrow()
                        .assessment()
                        .discrepancies())
                .noneMatch(d -> d.code() == DiscrepancyCode.NO_APPOINTMENT);
    }

    @Test
    void aTestIsVoidedWithALetterAndAReason() {
        SubmissionId id = sample.take("12-sent-late.eml");
        assertThat(desk.judging()
                        .voidTest(
                                SampleDesk.READER,
                                sample.ticket(id),
                                List.of(DiscrepancyCode.LATE),
                                Reason.of("no-bearing")))
                .as("a reason that fits acceptance only")
                .isInstanceOf(ActionResult.Refused.class);
        ActionResult voided = desk.judging()
                .voidTest(
                        SampleDesk.READER,
                        sample.ticket(id),
                        List.of(DiscrepancyCode.LATE),
                        Reason.of("outside-window"));
        assertThat(voided).as(voided.words()).isInstanceOf(Done.class);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.CLOSED);
        assertThat(desk.outbox().of(id)).extracting(OutboxLetter::kind).containsExactly(LetterKind.VOIDED);
    }

    @Test
    void automaticMailIsNeverAnswered() {
        SubmissionId id = sample.take("20-out-of-office.eml");
        assertThat(desk.replying().draft(id, Optional.empty())).isEmpty();
    }

    @Test
    void aQuarantinedLotHoldsWhatIsOpen() {
        SubmissionId id = sample.take("01-perfect.eml");
        String lot = desk.casebook()
                .submission(id, sample.now())
                .orElseThrow()
                .test()
                .orElseThrow()
                .lot()
                .orElseThrow();
        assertThat(desk.registers().quarantine(SampleDesk.READER, lot, "leaking buffer"))
                .isEqualTo(new Registering.Entry.Made(1));
        desk.worker().drain();
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.HELD);
        desk.registers().lift(SampleDesk.READER, lot);
        desk.worker().drain();
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.TO_READ);
    }
}
