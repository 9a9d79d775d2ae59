package org.tidegate.rules;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tidegate.rules.HourRules.Shift;

/**
 * The staffed times as instants. A wall time that comes twice in autumn begins a shift the first and ends it the second time;
 * one that spring leaves out counts as if the clock had not been changed yet.
 */
public final class ServiceHours {

    /** Every shift comes again within a week; one may begin on the day before. */
    private static final int DAYS = 9;

    private final ZoneId zone;
    private final List<Shift> shifts;

    private ServiceHours(HourRules rules) {
        this.zone = rules.zone();
        this.shifts = rules.shifts();
    }

    public static ServiceHours of(HourRules rules) {
        return new ServiceHours(rules);
    }

    /**
     * A time in which somebody is there without a gap.
     *
     * @param from inclusive
     * @param until exclusive
     */
    public record Span(Instant from, Instant until) {

        boolean holds(Instant t) {
            return !t.isBefore(from) && t.isBefore(until);
        }
    }

    public boolean open(Instant t) {
        return at(t).isPresent();
    }

    /** The staffed time that this moment lies in. */
    public Optional<Span> at(Instant t) {
        return around(t).stream().filter(s -> s.holds(t)).findFirst();
    }

    /** When the next shift begins after this moment; empty where somebody is always there. */
    public Optional<Instant> nextStart(Instant t) {
        return around(t).stream().map(Span::from).filter(t::isBefore).findFirst();
    }

    /** When the last shift ended, at this moment at the latest; empty where somebody is always there. */
    public Optional<Instant> lastEnd(Instant t) {
        return around(t).stream()
                .map(Span::until)
                .filter(end -> !end.isAfter(t))
                .reduce((a, b) -> b);
    }

    /** When so much staffed time has passed: what is promised at night is promised from the morning on. */
    public Instant after(Instant start, Duration staffed) {
        Duration left = staffed;
        Instant end = start;
        for (Span s : around(start)) {
            if (s.until().isAfter(start)) {
                Instant from = s.from().isAfter(start) ? s.from() : start;
                end = from.plus(left);
                if (!end.isAfter(s.until())) {
                    return end;
                }
                left = left.minus(Duration.between(from, s.until()));
            }
        }
        return end;
    }

    /** All staffed times of the days around, in order, those that touch as one. */
    private List<Span> around(Instant t) {
        LocalDate day = t.atZone(zone).toLocalDate();
        List<Span> all = new ArrayList<>();
        for (LocalDate d = day.minusDays(DAYS); !d.isAfter(day.plusDays(DAYS)); d = d.plusDays(1)) {
            for (Shift shift : shifts) {
                if (shift.days().contains(d.getDayOfWeek())) {
                    all.add(span(shift, d));
                }
            }
        }
        all.sort(Comparator.comparing(Span::from).thenComparing(Span::until));
        return joined(all);
    }

    private Span span(Shift shift, LocalDate day) {
        LocalDate last = shift.until().isAfter(shift.from()) ? day : day.plusDays(1);
        return new Span(
                day.atTime(shift.from())
                        .atZone(zone)
                        .withEarlierOffsetAtOverlap()
                        .toInstant(),
                last.atTime(shift.until())
                        .atZone(zone)
                        .withLaterOffsetAtOverlap()
                        .toInstant());
    }

    private static List<Span> joined(List<Span> sorted) {
        List<Span> joined = new ArrayList<>();
        for (Span s : sorted) {
            int last = joined.size() - 1;
            if (last >= 0 && !s.from().isAfter(joined.get(last).until())) {
                Span before = joined.get(last);
                joined.set(last, new Span(before.from(), later(before.until(), s.until())));
            } else {
                joined.add(s);
            }
        }
        return joined;
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}
