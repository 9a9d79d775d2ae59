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
        List<ZoneCase> zones = ZoneCase.of(capture.device(), date, rules);
        Tried best = attempt(zones.get(0), clues(date));
        return atOnce(question, best).orElseGet(() -> judge(question, date, best, zones.subList(1, zones.size())));
    }

    /** What the best-founded zone decides by itself: the others could not change it. */
    private static Optional<Result> atOnce(Question question, Tried best) {
        if (!best.remains()) {
            return Optional.empty();
        }
        for (Level level : List.of(Level.RECORDED, Level.NETWORK, Level.DEVICE)) {
            Answer answer = best.run().answer(question, level);
            if (answer.verdict() == Verdict.INSIDE || (answer.decided() && level != Level.DEVICE)) {
                return Optional.of(result(answer, level, best.run()));
            }
        }
        return Optional.empty();
    }

    private Result judge(Question question, Optional<HeaderDate> date, Tried best, List<ZoneCase> others) {
        List<Tried> tried = new ArrayList<>(List.of(best));
        tried.addAll(attempt(others, date));
        if (date.isPresent() && tried.stream().noneMatch(Tried::remains)) {
            return judge(question, attempt(ZoneCase.of(capture.device(), Optional.empty(), rules), Optional.empty()));
        }
        Result result = judge(question, tried);
        List<ZoneCase> journeys = ZoneCase.changedBetween(capture.device(), date, rules);
        if (result.answer().verdict() != Verdict.OUTSIDE || journeys.isEmpty()) {
            return result;
        }
        tried.addAll(attempt(journeys, date));
        return judge(question, tried);
    }

    private List<Tried> attempt(List<ZoneCase> zones, Optional<HeaderDate> date) {
        PhotoClues clues = clues(date);
        return zones.stream().map(zone -> attempt(zone, clues)).toList();
    }

    private PhotoClues clues(Optional<HeaderDate> date) {
        return new PhotoClues(capture, date, journey.firstHop(), rules, wording);
    }

    private Tried attempt(ZoneCase zone, PhotoClues ofPhoto) {
        PhotoClues.InZone photo = ofPhoto.in(zone);
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
        Result undecided = result(best.run().known(question), Level.STATED, best.run());
        return zoneOpen ? inOpenZone(undecided, question, possible) : undecided;
    }

    /**
     * The best-founded zone fell and others remain. A wrong clock is named only where no zone would make an honest photo of it; how wrong
     * the clock is, nobody can know.
     */
    private static Result inOpenZone(Result undecided, Question question, List<Tried> possible) {
        boolean journeyExplains = possible.stream()
                .anyMatch(t -> t.run().answer(question, Level.STATED).verdict() == Verdict.INSIDE);
        if (!journeyExplains) {
            return new Result(undecided.verdict(), undecided.answer(), undecided.conflict(), Optional.empty());
        }
        List<Telling.Chain> known = new ArrayList<>(undecided.answer().chains());
        known.add(new Telling.Chain(List.of(Telling.openZone(question)), List.of()));
        Answer answer = Answer.undetermined(known);
        return new Result(
                answer.verdict(WindowVerdict.Check.PHOTO, Level.STATED), answer, Optional.empty(), Optional.empty());
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
