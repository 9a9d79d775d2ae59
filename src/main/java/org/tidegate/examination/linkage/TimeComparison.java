package org.tidegate.examination.linkage;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.rules.MatchingRules.AgreementLevel;

/**
 * Weighs times as densities, not as cuts: each level of the rules is a plateau with exponential tails, m and u are the shares
 * that the levels have in the two mixtures, and the weight is the logarithm of the ratio of the mixtures.
 */
final class TimeComparison {

    /** Mean tail in minutes of each level of field {@code time}; common practice, no source. */
    private static final Map<String, Double> STATED_TAIL =
            Map.of("slot", 1.0, "edge", 6.0, "hour", 45.0, "shift", 240.0, "day", 1440.0);

    /** Level of field {@code arrival}: minutes from slot start that the plateau spans, and the mean tail. */
    private static final Map<String, Plateau> ARRIVAL = Map.of(
            "prompt", new Plateau(15, 95, 10), "late", new Plateau(0, 120, 120), "very_late", new Plateau(0, 600, 600));

    private static final double LEAST_DENSITY = 1e-7;
    private static final double MOST_SHIFT = 8;

    private final Weights weights;
    private final ZoneId zone;

    TimeComparison(Weights weights, ZoneId zone) {
        this.weights = weights;
        this.zone = zone;
    }

    /**
     * Weights of the stated time, where there is one, and of the arrival.
     *
     * @param likeliest false for an alternative reading: that it does not fit the arrival speaks against the reading, not for the test
     */
    List<FieldWeight> compare(Optional<LocalDateTime> stated, Instant arrived, TestRecord test, boolean likeliest) {
        List<FieldWeight> found = new ArrayList<>();
        Instant start = test.appointment().slotStart().toInstant();
        double delay = minutes(start, arrived);
        if (stated.isEmpty()) {
            arrival(delay).ifPresent(found::add);
            return found;
        }
        Instant said = said(stated.get(), start);
        found.add(stated(said, test));
        double shift = Weights.log2(arrivalDensity(delay) / arrivalDensity(minutes(said, arrived)));
        double bounded = Math.max(-MOST_SHIFT, Math.min(likeliest ? MOST_SHIFT : 0, shift));
        if (Math.abs(bounded) >= 0.5) {
            found.add(new FieldWeight("arrival", "against_stated", bounded, words(delay) + ", unlike the stated time"));
        }
        return found;
    }

    /** Of the two instants that a wall has in the hour that occurs twice, the one nearer to the slot. */
    private Instant said(LocalDateTime wall, Instant start) {
        return zone.getRules().getValidOffsets(wall).stream()
                .map(wall::toInstant)
                .min(Comparator.comparing(t -> Duration.between(start, t).abs()))
                .orElseGet(() -> wall.atZone(zone).toInstant());
    }

    private FieldWeight stated(Instant said, TestRecord test) {
        Instant start = test.timerStart()
                .map(t -> t.toInstant().minusSeconds(120))
                .orElseGet(() -> test.appointment().slotStart().toInstant());
        Instant end = test.timerStart()
                .map(t -> t.toInstant().plusSeconds(180))
                .orElseGet(() -> test.appointment().slotEnd().toInstant());
        double length = minutes(start, end);
        double minute = minutes(start, said);
        double m = 0;
        double u = 0;
        double most = 0;
        String name = "day";
        for (AgreementLevel level : weights.levels("time")) {
            double density = new Plateau(0, length, STATED_TAIL.getOrDefault(level.name(), 1440.0)).at(minute);
            m += level.m() * density;
            u += level.u() * density;
            if (level.m() * density > most) {
                most = level.m() * density;
                name = level.name();
            }
        }
        double ratio = Math.max(m, LEAST_DENSITY / 10) / Math.max(u, LEAST_DENSITY);
        return new FieldWeight("time", name, Weights.log2(ratio), distance(minute, length));
    }

    private static String distance(double minute, double length) {
        if (minute < 0) {
            return "stated " + Math.round(-minute) + " min before the slot";
        }
        return minute < length
                ? "stated inside the slot"
                : "stated " + Math.round(minute - length) + " min after the slot's end";
    }

    private Optional<FieldWeight> arrival(double delay) {
        List<AgreementLevel> levels = weights.levels("arrival");
        double u = 0;
        double most = 0;
        String name = "very_late";
        for (AgreementLevel level : levels) {
            double density = density(level, delay);
            u += level.u() * density;
            if (level.m() * density > most) {
                most = level.m() * density;
                name = level.name();
            }
        }
        if (levels.isEmpty()) {
            return Optional.empty();
        }
        double weight = Weights.log2(arrivalDensity(delay) / Math.max(u, LEAST_DENSITY));
        return Optional.of(new FieldWeight("arrival", name, weight, words(delay)));
    }

    private double arrivalDensity(double delay) {
        double m = 0;
        for (AgreementLevel level : weights.levels("arrival")) {
            m += level.m() * density(level, delay);
        }
        return Math.max(m, LEAST_DENSITY);
    }

    private static double density(AgreementLevel level, double delay) {
        Plateau shape = ARRIVAL.get(level.name());
        return shape == null ? 0 : shape.at(delay);
    }

    private static String words(double delay) {
        return "arrived " + Math.round(delay) + " min after the slot's start";
    }

    private static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 60_000.0;
    }
}
