package org.tidegate.examination;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.checks.CheckInput;
import org.tidegate.examination.checks.Checks;
import org.tidegate.examination.linkage.Candidate;
import org.tidegate.examination.linkage.LinkageResult;
import org.tidegate.examination.linkage.LinkageResult.Outcome;
import org.tidegate.examination.linkage.Linker;
import org.tidegate.examination.linkage.Nicknames;
import org.tidegate.examination.linkage.Statement;
import org.tidegate.examination.timing.Arrival;
import org.tidegate.examination.timing.TimeCase;
import org.tidegate.examination.timing.TimeJudge;
import org.tidegate.examination.timing.TimeJudgement;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Findings;
import org.tidegate.finding.SubjectReading;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.message.HeaderDate;
import org.tidegate.message.Mailbox;
import org.tidegate.rules.Rules;

/** {@code assess}: match, time verdicts and discrepancies of one submission. Pure, cheap, done again whenever an input changes. */
public final class Assessor {

    private final Rules rules;
    private final Linker linker;
    private final TimeJudge judge;

    public Assessor(Rules rules) {
        this.rules = rules;
        this.linker = new Linker(rules.matching(), rules.timing().zone(), Nicknames.standard());
        this.judge = new TimeJudge(rules.timing());
    }

    public Assessment assess(AssessmentInput in) {
        LinkageResult match = in.linked()
                .filter(t -> in.tests().find(t).isPresent())
                .map(t -> byAPerson(match(in), t))
                .orElseGet(() -> match(in));
        Optional<TestRecord> test = match.test().flatMap(in.tests()::find);
        boolean timed = in.messages().stream().anyMatch(m -> MessageClass.of(m) == MessageClass.SUBMISSION);
        Optional<TimeJudgement> time = test.filter(t -> timed)
                .flatMap(t -> rules.protocol(t.kit()).map(p -> judge.judge(TimeEvidence.of(in, match, t, p))));
        List<Discrepancy> discrepancies =
                Checks.run(new CheckInput(in.messages(), match, test, time, in.standing(), rules));
        return new Assessment(
                match,
                test.map(TestRecord::key),
                time.map(Assessor::windows).orElse(List.of()),
                time,
                discrepancies,
                Assessment.disposition(discrepancies),
                rules.hash());
    }

    /** The match of one message by itself. A letter's words may look like a name: where they fit nobody, the sender decides. */
    public LinkageResult link(Findings message, OpenTests tests) {
        LinkageResult found = link(message, message.readings(), tests);
        boolean letter = MessageClass.of(message) == MessageClass.CORRESPONDENCE;
        if (!letter || found.outcome() != Outcome.NONE) {
            return found;
        }
        return link(
                message,
                message.readings().stream().map(SubjectReading::withoutName).toList(),
                tests);
    }

    private LinkageResult link(Findings message, List<SubjectReading> readings, OpenTests tests) {
        LinkageResult found = linker.link(statement(message, readings), tests.index());
        return Attempts.begun(
                found,
                arrived(message),
                stated(found, readings),
                tests,
                rules.timing().zone());
    }

    /** The time that the reading states by which the likeliest test was found. */
    private static Optional<LocalDateTime> stated(LinkageResult found, List<SubjectReading> readings) {
        return found.candidates().stream()
                .findFirst()
                .filter(c -> c.reading() < readings.size())
                .flatMap(c -> readings.get(c.reading()).testTime());
    }

    /** What a message states, as matching takes it. */
    public Statement statement(Findings message, List<SubjectReading> readings) {
        Optional<Mailbox> from = message.envelope().from().stream().findFirst();
        return new Statement(
                readings, from.flatMap(Mailbox::displayName), from.map(Mailbox::address), arrived(message));
    }

    /** The submission's match: what its messages say alone, the surest first; two sure ones that differ leave it open. */
    private LinkageResult match(AssessmentInput in) {
        if (MessageClass.of(in.messages().get(0)) == MessageClass.NOT_A_SUBMISSION) {
            return new LinkageResult(Outcome.NONE, Optional.empty(), 0, List.of());
        }
        LinkageResult best = link(in.messages().get(0), in.tests());
        for (Findings message : in.messages().subList(1, in.messages().size())) {
            LinkageResult next = link(message, in.tests());
            if (differ(best.test(), next.test())) {
                return torn(best, next);
            }
            best = next.probability() > best.probability() ? next : best;
        }
        return best;
    }

    /** The rivals stay in sight. */
    private static LinkageResult byAPerson(LinkageResult found, TestKey test) {
        return new LinkageResult(Outcome.MATCH, Optional.of(test), 1, found.candidates());
    }

    private static LinkageResult torn(LinkageResult a, LinkageResult b) {
        List<Candidate> candidates = new ArrayList<>(a.candidates());
        candidates.addAll(b.candidates());
        return new LinkageResult(
                Outcome.AMBIGUOUS, Optional.empty(), Math.max(a.probability(), b.probability()), candidates);
    }

    private static boolean differ(Optional<TestKey> a, Optional<TestKey> b) {
        return a.isPresent() && b.isPresent() && !a.equals(b);
    }

    /**
     * The evidence behind an assessment's time verdicts, from the input that it was made of: what a {@code TimeDrawing} or an
     * {@code Enclosure} shows. Empty where it has none.
     */
    public Optional<TimeCase> timeCase(AssessmentInput in, Assessment a) {
        Optional<TestRecord> test = a.time().flatMap(t -> a.test()).flatMap(in.tests()::find);
        return test.flatMap(t -> rules.protocol(t.kit()).map(p -> TimeEvidence.of(in, a.match(), t, p)));
    }

    private static List<WindowVerdict> windows(TimeJudgement time) {
        List<WindowVerdict> all = new ArrayList<>();
        time.photo().ifPresent(all::add);
        all.add(time.sent());
        return List.copyOf(all);
    }

    private Instant arrived(Findings message) {
        return Arrival.of(message.envelope(), message.delivered(), rules.timing())
                .time()
                .or(() -> message.envelope().date().map(HeaderDate::instant))
                .orElse(Instant.EPOCH);
    }
}
