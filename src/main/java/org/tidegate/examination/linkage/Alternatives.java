package org.tidegate.examination.linkage;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tidegate.finding.SubjectReading;

/**
 * Which readings may stand in for the best one. A reading that leaves out the name, words of it, the time or the clinic would hide
 * what speaks against a test; it is no alternative, only less evidence.
 */
final class Alternatives {

    private static final int MOST_READINGS = 16;
    private static final double MOST_PENALTY = 6;

    private Alternatives() {}

    /** Indices of the readings to compare, the best first. */
    static List<Integer> of(List<SubjectReading> readings) {
        SubjectReading best = readings.get(0);
        return IntStream.range(0, Math.min(readings.size(), MOST_READINGS))
                .filter(i -> i == 0 || statesAsMuch(readings.get(i), best))
                .boxed()
                .toList();
    }

    private static boolean statesAsMuch(SubjectReading other, SubjectReading best) {
        boolean named = best.name().isEmpty() || other.name().isPresent();
        boolean timed = best.testTime().isEmpty() || other.testTime().isPresent();
        boolean placed = best.clinic().isEmpty() || other.clinic().isPresent();
        boolean born = best.dateOfBirth().isEmpty() || other.dateOfBirth().isPresent();
        boolean referred = best.reference().isEmpty() || other.reference().isPresent();
        return named && timed && placed && born && referred && !leavesOutWords(other.name(), best.name());
    }

    private static boolean leavesOutWords(Optional<String> other, Optional<String> best) {
        Set<String> words = words(other);
        Set<String> all = words(best);
        return all.size() > words.size() && all.containsAll(words);
    }

    private static Set<String> words(Optional<String> name) {
        return name.map(PersonName::of).stream()
                .flatMap(n -> Stream.concat(n.tokens().stream().map(NameToken::plain), n.suffix().stream()))
                .collect(Collectors.toSet());
    }

    /** What a reading weighs for not being the likeliest one: a bit for each unit of cost. */
    static Optional<FieldWeight> penalty(List<SubjectReading> readings, int number) {
        double more = readings.get(number).cost() - readings.get(0).cost();
        return more <= 0.05
                ? Optional.empty()
                : Optional.of(new FieldWeight(
                        "reading", "alternative", -Math.min(MOST_PENALTY, more), "not the likeliest reading"));
    }
}
