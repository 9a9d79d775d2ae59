package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.Assessment;
import org.tidegate.examination.OpenTests;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;
import org.tidegate.store.StoredAssessment;
import org.tidegate.store.StoredJson;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.UserId;

/** Writes what a fold found: new assessments beside the old ones, submissions as they now stand, suggested replies, events. */
final class Keeping {

    private final Tx tx;
    private final FoldView view;
    private final OpenTests tests;
    private final Rules rules;
    private final Instant now;

    Keeping(Tx tx, FoldView view, OpenTests tests, Rules rules, Instant now) {
        this.tx = tx;
        this.view = view;
        this.tests = tests;
        this.rules = rules;
        this.now = now;
    }

    /** Nothing is written where messages and assessment are the same as before. */
    void keep(Draft draft, Verdicts verdicts) {
        if (draft.messages().isEmpty()) {
            draft.stored().ifPresent(this::dissolve);
        } else {
            verdicts.of(draft.members())
                    .ifPresent(a -> keep(draft, draft.members().ids(), a));
        }
    }

    private void dissolve(Submission stored) {
        tx.submissions().dissolve(stored.id());
        tx.record(
                "submission-dissolved",
                UserId.DAEMON,
                List.of(),
                Map.of("submission", stored.id().toString()));
    }

    private void keep(Draft draft, List<MessageId> messages, Assessment assessment) {
        Optional<StoredAssessment> newest = tx.assessments().newest(draft.id());
        String content = StoredJson.write(assessment);
        boolean same = newest.filter(
                        n -> n.content().equals(content) && n.messages().equals(messages))
                .isPresent();
        if (!same || draft.stored().isEmpty()) {
            append(
                    draft,
                    messages,
                    assessment,
                    content,
                    newest.map(StoredAssessment::number).orElse(0) + 1);
        }
    }

    private void append(Draft draft, List<MessageId> messages, Assessment a, String content, int number) {
        List<String> codes = a.discrepancies().stream().map(Keeping::code).toList();
        tx.assessments()
                .append(new StoredAssessment(
                        draft.id(),
                        number,
                        now,
                        a.rulesHash(),
                        messages,
                        a.match().outcome().name().toLowerCase(Locale.ROOT),
                        codes,
                        content));
        Optional<TestRecord> test = a.test().flatMap(tests::find);
        Findings first = view.findings(draft.members()).orElseThrow().get(0);
        Deadlines deadlines = Deadlines.of(first, view.message(messages.get(0)).taken(), a, test, rules);
        Submission submission = submission(draft, messages, a, test, deadlines, number);
        if (!tx.submissions().save(submission)) {
            throw new IllegalStateException(submission.id() + " was changed by someone else meanwhile");
        }
        tx.record(
                "assessed",
                UserId.DAEMON,
                codes,
                Map.of(
                        "submission", draft.id().toString(),
                        "assessment", Integer.toString(number),
                        "state", submission.state().code(),
                        "rules", a.rulesHash()));
        new RequestWriter(rules)
                .suggest(new Matter(draft.id(), number, first, a, test, deadlines), now)
                .ifPresent(tx.replies()::suggest);
    }

    private Submission submission(
            Draft draft,
            List<MessageId> messages,
            Assessment a,
            Optional<TestRecord> test,
            Deadlines deadlines,
            int number) {
        List<Discrepancy> open = OpenHolds.of(tx, draft.id(), a);
        Optional<Instant> savable = deadlines.savable(open, rules, deadlines.arrived());
        return new Submission(
                draft.id(),
                state(draft, messages, a, open),
                messages,
                a.test().map(TestKey::toString),
                a.discrepancies().stream().anyMatch(d -> d.code() == DiscrepancyCode.URGENT_WORDS),
                deadlines.arrived(),
                deadlines.due(savable, rules),
                savable,
                test.flatMap(t -> t.appointment().neededBy()).map(t -> t.toInstant()),
                number,
                draft.stored().map(Submission::version).orElse(0) + 1);
    }

    /** What waits for the participant goes on waiting until something new comes; what is closed stays closed. */
    private SubmissionState state(Draft draft, List<MessageId> messages, Assessment a, List<Discrepancy> open) {
        SubmissionState found = found(draft, a, open);
        if (!draft.pinned()) {
            return found;
        }
        Submission stored = draft.stored().orElseThrow();
        boolean news = messages.size() > stored.messages().size() || found == SubmissionState.TO_READ;
        return switch (stored.state()) {
            case WAITING -> news ? found : SubmissionState.WAITING;
            case READ -> found == SubmissionState.ASIDE ? SubmissionState.READ : found;
            default -> stored.state();
        };
    }

    private SubmissionState found(Draft draft, Assessment a, List<Discrepancy> open) {
        if (a.disposition() == Assessment.Disposition.ASIDE) {
            return SubmissionState.ASIDE;
        }
        if (!open.isEmpty()) {
            return SubmissionState.HELD;
        }
        return tx.readings().of(draft.id()).isEmpty() ? SubmissionState.TO_READ : SubmissionState.READ;
    }

    private static String code(Discrepancy d) {
        return d.severity().code() + ":" + d.code().code();
    }
}
