package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.examination.timing.ZoneCase.Standing;
import org.tidegate.finding.Level;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.message.HeaderDate;
import org.tidegate.rules.TimingRules;

/** Judges one photo: one network for each zone in which its time may have been written. */
final class PhotoJudge {

    /** Zones in which an {@code inside} stands by itself, in this order. */
    private static final List<Standing> FOUNDED = List.of(Standing.WRITTEN, Standing.FROM_DATE, Standing.CLINIC);

    private final Capture capture;
    private final List<Constraint> shared;
    private final Journey journey;
    private final TimingRules rules;
    private final Wording wording;

    /** @param shared clues about the test and the message's journey */
    PhotoJudge(Capture capture, List<Constraint> shared, Journey journey, TimingRules rules, Wording wording) {
        this.capture = capture;
        this.shared = shared;
        this.journey = journey;
        this.rules = rules;
        this.wording = wording;
    }

    /**
     * @param conflict clocks that contradict each other in the best-founded network
     * @param clock error of the phone's clock, where proven
     */
    record Result(
            WindowVerdict verdict,
            Answer answer,
            Optional<Belief.Contradiction> conflict,
            Optional<TimeJudgement.PhoneClockError> clock) {}

    private record Tried(ZoneCase zone, CaseRun run, boolean remains) {}

    /** @param date the message's Date where the same phone seems to have written it; given up where no zone lets it stand */
    Result judge(Question question, Optional<HeaderDate> date) {
        List<Tried> tried = attempt(date);
        if (date.isPresent() && tried.stream().noneMatch(Tried::remains)) {
            tried = attempt(Optional.empty());
        }
        return judge(question, tried);
    }

    private List<Tried> attempt(Optional<HeaderDate> date) {
        PhotoClues clues = new PhotoClues(capture, date, journey.firstHop(), rules, wording);
        return ZoneCase.of(capture.device(), date, rules).stream()
                .map(zone -> attempt(zone, clues.in(zone)))
                .toList();
    }

    private Tried attempt(ZoneCase zone, PhotoClues.InZone photo) {
        List<Constraint> clues = new ArrayList<>(shared);
        clues.addAll(photo.clues());
        CaseRun run = new CaseRun(Assumptions.allowed(clues, rules), wording);
        return new Tried(zone, run, run.holds(photo.key()));
    }

    private static Result judge(Question question, List<Tried> tried) {
        Tried best = tried.get(0);
        List<Tried> remaining = tried.stream().filter(Tried::remains).toList();
        List<Tried> possible = remaining.isEmpty() ? List.of(best) : remaining;
        boolean zoneOpen = !best.remains() && possible.size() > 1;
        for (Level level : Level.values()) {
            Answer answer = combine(question, possible, level, zoneOpen);
            if (answer.decided()) {
                return result(answer, level, possible.get(0).run());
            }
        }
        return result(best.run().known(question), Level.STATED, best.run());
    }

    private static Result result(Answer answer, Level level, CaseRun lead) {
        return new Result(
                answer.verdict(WindowVerdict.Check.PHOTO, level),
                answer,
                lead.conflict(),
                PhoneClock.error(lead.beliefs()));
    }

    /**
     * Inside where a founded zone says so, or all that remain; outside where all that remain do.
     *
     * @param zoneOpen the best-founded zone fell: a wrong clock explains that as well as a journey, so an outside is not concluded
     */
    private static Answer combine(Question question, List<Tried> possible, Level level, boolean zoneOpen) {
        if (level.number() < Level.DEVICE.number()) {
            return possible.get(0).run().answer(question, level);
        }
        List<Answer> all =
                possible.stream().map(t -> t.run().answer(question, level)).toList();
        Optional<Answer> founded = FOUNDED.stream()
                .flatMap(standing -> inside(possible, all, standing))
                .findFirst();
        if (founded.isPresent()) {
            return founded.get();
        }
        Answer agreed = Answer.agreedInAllZones(all, question);
        return zoneOpen && agreed.verdict() == Verdict.OUTSIDE ? Answer.undetermined() : agreed;
    }

    private static Stream<Answer> inside(List<Tried> possible, List<Answer> answers, Standing standing) {
        return Stream.iterate(0, i -> i < possible.size(), i -> i + 1)
                .filter(i -> possible.get(i).zone().standing() == standing)
                .map(answers::get)
                .filter(a -> a.verdict() == Verdict.INSIDE);
    }
}
