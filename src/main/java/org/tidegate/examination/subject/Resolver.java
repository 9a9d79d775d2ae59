package org.tidegate.examination.subject;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.examination.subject.Candidate.Days;

/** Gives a stated time its day: by what was stated, and by what is likely so long before the message came. */
final class Resolver {

    private static final double UNLIKELY = 12;

    private final ZoneId home;
    private final LocalDateTime arrival;

    Resolver(ZoneId home, Instant received) {
        this.home = home;
        this.arrival = LocalDateTime.ofInstant(received, home);
    }

    /** A wall time of the clinic's zone and what it costs to believe it. */
    record Resolved(LocalDateTime wall, double cost) {}

    LocalDateTime arrival() {
        return arrival;
    }

    List<Resolved> resolve(ClockTime time, Optional<StatedDate> date, Optional<Days> weekday, Optional<Days> period) {
        ClockTime clock = period.map(p -> time.within(p.value())).orElse(time);
        List<Resolved> all = new ArrayList<>();
        List<Day> days = days(date, weekday);
        for (Day day : days) {
            int half = 0;
            List<LocalTime> options = clock.within(day.hours()).options();
            double likelierHalf = likelierHalf(day, options, clock.zone());
            for (LocalTime option : options) {
                LocalDateTime stated = day.date().atTime(option);
                if (day.nightOnly() && !night(stated)) {
                    continue;
                }
                LocalDateTime wall = converted(stated, clock.zone());
                double cost = day.cost()
                        + 0.3 * half
                        + lag(wall, date.isPresent() || weekday.isPresent())
                        + (options.size() > 1 ? age(wall) - likelierHalf : 0)
                        + weekdayCost(day.date(), weekday);
                all.add(new Resolved(wall, cost));
                half++;
            }
        }
        return all;
    }

    /** @param hours as a mask, 0 for all */
    private record Day(LocalDate date, boolean nightOnly, int hours, double cost) {

        Day(LocalDate date, double cost) {
            this(date, false, 0, cost);
        }
    }

    private List<Day> days(Optional<StatedDate> date, Optional<Days> weekday) {
        LocalDate today = arrival.toLocalDate();
        List<Day> days = new ArrayList<>();
        if (date.isPresent()) {
            date.get().options().forEach(o -> addOption(o, today, days));
        } else if (weekday.isPresent()) {
            int back = Math.floorMod(
                    today.getDayOfWeek().getValue() - weekday.get().value(), 7);
            days.add(new Day(today.minusDays(back), 0));
            days.add(new Day(today.minusDays(back - 7L), 1));
        } else {
            days.add(new Day(today, 0));
            days.add(new Day(today.minusDays(1), 0.2));
            days.add(new Day(today.plusDays(1), 0.6));
        }
        return days;
    }

    private static void addOption(StatedDate.Option option, LocalDate today, List<Day> days) {
        if (option instanceof StatedDate.Relative r) {
            days.add(new Day(today.plusDays(r.days()), r.nightOnly(), r.hours(), r.cost()));
            return;
        }
        StatedDate.Calendar c = (StatedDate.Calendar) option;
        LocalDate date = c.month() == 0 ? dayOfMonth(c.day(), today) : nearest(c, today);
        days.add(new Day(date, c.cost()));
    }

    /** The day of that number nearest to today. */
    private static LocalDate dayOfMonth(int day, LocalDate today) {
        LocalDate best = today;
        long closest = Long.MAX_VALUE;
        for (int months = -1; months <= 1; months++) {
            LocalDate month = today.plusMonths(months).withDayOfMonth(1);
            LocalDate candidate = month.plusDays(day - 1L);
            long apart = Math.abs(ChronoUnit.DAYS.between(candidate, today));
            if (candidate.getMonth() == month.getMonth() && apart < closest) {
                closest = apart;
                best = candidate;
            }
        }
        return best;
    }

    /** Without a year, the year in which the date is nearest to today. */
    private static LocalDate nearest(StatedDate.Calendar c, LocalDate today) {
        if (c.year() > 0) {
            return LocalDate.of(c.year(), c.month(), c.day());
        }
        LocalDate best = LocalDate.MIN;
        long closest = Long.MAX_VALUE;
        for (int year = today.getYear() - 1; year <= today.getYear() + 1; year++) {
            if (StatedDate.valid(year, c.month(), c.day())) {
                LocalDate candidate = LocalDate.of(year, c.month(), c.day());
                long apart = Math.abs(ChronoUnit.DAYS.between(candidate, today));
                if (apart < closest) {
                    closest = apart;
                    best = candidate;
                }
            }
        }
        return best.equals(LocalDate.MIN) ? today : best;
    }

    /** From the evening of the day before to the small hours. */
    private boolean night(LocalDateTime wall) {
        LocalDate today = arrival.toLocalDate();
        boolean evening = wall.toLocalDate().equals(today.minusDays(1)) && wall.getHour() >= 17;
        return evening || wall.toLocalDate().equals(today) && wall.getHour() < 7;
    }

    private LocalDateTime converted(LocalDateTime wall, Optional<ZoneId> zone) {
        return zone.map(z -> wall.atZone(z).withZoneSameInstant(home).toLocalDateTime())
                .orElse(wall);
    }

    private static double weekdayCost(LocalDate date, Optional<Days> weekday) {
        return weekday.isEmpty()
                        || date.getDayOfWeek().getValue() == weekday.get().value()
                ? 0
                : 1.5;
    }

    private double likelierHalf(Day day, List<LocalTime> options, Optional<ZoneId> zone) {
        double least = Double.MAX_VALUE;
        if (options.size() > 1) {
            for (LocalTime option : options) {
                least = Math.min(least, age(converted(day.date().atTime(option), zone)));
            }
        }
        return least;
    }

    /** A date does not tell which half of the day was meant: the one not long before the message is likelier. */
    private double age(LocalDateTime wall) {
        double hours = Duration.between(wall, arrival).toMinutes() / 60.0;
        return Math.max(0, Math.min(0.6, 0.05 * (hours - 2)));
    }

    /** People write ten minutes to two hours after the test; a time still to come is a slip, one long past an old message. */
    private double lag(LocalDateTime wall, boolean dated) {
        double hours = Duration.between(wall, arrival).toMinutes() / 60.0;
        if (hours < -0.1) {
            return Math.min(UNLIKELY, 1.5 + 0.25 * -hours);
        }
        double old = Math.max(0, hours - 2);
        return dated ? Math.min(2, 0.01 * old) : Math.min(6, 0.12 * old);
    }
}
