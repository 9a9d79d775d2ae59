package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.examination.timing.ZoneCase.Standing;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.Level;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.rules.TimingRules;

/** Judges one photo: one network for each zone in which its time may have been written. */
final class PhotoJudge {

    /** Zones in which an {@code inside} stands, in this order. */
    private static final List<Standing> INSIDE_STANDS_IN =
            List.of(Standing.WRITTEN, Standing.FROM_DATE, Standing.CLINIC);

    private final PhotoClues photo;
    private final List<Constraint> shared;
    private final TimingRules rules;

    /** @param shared clues about the test and the message's journey */
    PhotoJudge(PhotoClues photo, List<Constraint> shared, TimingRules rules) {
        this.photo = photo;
        this.shared = shared;
        this.rules = rules;
    }

    /**
     * @param conflict clocks that contradict each other in the network that leads
     * @param clock error of the phone's clock, where proven
     */
    record Result(
            WindowVerdict verdict,
            Answer answer,
            Optional<Belief.Contradiction> conflict,
            Optional<TimeJudgement.PhoneClockError> clock) {}

    private record Tried(ZoneCase zone, CaseRun run, boolean remains) {}

    Result judge(Question question) {
        List<Tried> all = ZoneCase.of(photo, rules).stream().map(this::attempt).toList();
        List<Tried> remaining = all.stream().filter(Tried::remains).toList();
        Tried lead = remaining.stream().findFirst().orElse(all.get(0));
        boolean leadFell = !all.get(0).remains();
        for (Level level : Level.values()) {
            Answer answer = combine(question, remaining.isEmpty() ? List.of(lead) : remaining, level, leadFell);
            if (answer.decided()) {
                return result(answer, level, lead.run());
            }
        }
        return result(Answer.undetermined(), Level.STATED, (leadFell ? all.get(0) : lead).run());
    }

    private Result result(Answer answer, Level level, CaseRun lead) {
        return new Result(
                answer.verdict(WindowVerdict.Check.PHOTO, level),
                answer,
                lead.conflict(),
                PhoneClock.error(photo.phone(), lead.beliefs()));
    }

    /**
     * Inside where the best-founded zone says so; outside where every remaining zone does. Where the best-founded zone itself fell,
     * a wrong clock explains it as well as a journey does: nothing below the recorded and network levels is concluded then.
     */
    private static Answer combine(Question question, List<Tried> remaining, Level level, boolean leadFell) {
        for (Standing standing : INSIDE_STANDS_IN) {
            List<Answer> answers = remaining.stream()
                    .filter(t -> t.zone().standing() == standing)
                    .map(t -> t.run().answer(question, level))
                    .toList();
            if (!answers.isEmpty() && Answer.agreed(answers).verdict() == Verdict.INSIDE) {
                return Answer.agreed(answers);
            }
        }
        Answer all = Answer.agreed(
                remaining.stream().map(t -> t.run().answer(question, level)).toList());
        boolean zoneMatters = remaining.size() > 1 && level.number() >= Level.DEVICE.number();
        return all.verdict() == Verdict.OUTSIDE && !(leadFell && zoneMatters) ? all : Answer.undetermined();
    }

    private Tried attempt(ZoneCase zone) {
        List<Assumption> leansOn = zone.leansOn();
        Optional<Constraint> captured = photo.capture().flatMap(c -> captured(c, zone, leansOn));
        Optional<Constraint> sent = photo.sent();
        List<Constraint> clues = new ArrayList<>(shared);
        clues.addAll(photo.always());
        captured.ifPresent(clues::add);
        sent.ifPresent(clues::add);
        List<Constraint> clock = clockClues(captured, sent, zone);
        clues.addAll(clock);
        CaseRun run = new CaseRun(allowed(clues));
        Optional<Constraint> key = sent.isPresent() ? captured : clock.stream().findFirst();
        return new Tried(zone, run, key.isEmpty() || run.holds(key.get()));
    }

    private Optional<Constraint> captured(CaptureClue clue, ZoneCase zone, List<Assumption> leansOn) {
        return photo.captured(clue, zone.offset(), leansOn);
    }

    private List<Constraint> clockClues(Optional<Constraint> captured, Optional<Constraint> sent, ZoneCase zone) {
        List<Constraint> clues = new ArrayList<>();
        boolean zoneCancels =
                zone.standing() == Standing.FROM_DATE && zone.offset().isEmpty();
        if (captured.isPresent() && !zoneCancels) {
            clues.add(photo.clockRight(List.of()));
        }
        if (sent.isPresent()) {
            clues.add(photo.handedOver());
        }
        return clues;
    }

    /** Only assumptions that the rules allow. */
    private List<Constraint> allowed(List<Constraint> clues) {
        return clues.stream()
                .filter(c -> c.clue().leansOn().stream()
                        .allMatch(a -> rules.assumptions().contains(a.name())))
                .toList();
    }

    static Stream<Constraint> allowedBy(TimingRules rules, Stream<Constraint> clues) {
        return clues.filter(c ->
                c.clue().leansOn().stream().allMatch(a -> rules.assumptions().contains(a.name())));
    }
}
