package org.tidegate.examination.subject;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tidegate.examination.subject.TimeFinder.Clock;

/** A time with a date, or without, and what it may mean given the arrival. */
record Reading(
        Optional<Found<Clock>> clock,
        Optional<Found<LocalDate>> date,
        Optional<Found<ZoneId>> zone,
        Arrival arrival,
        ZoneId home) {

    /** Cost of leaving a field unread. */
    private static final double NO_TIME = 5;

    private static final double NO_DATE = 0.7;

    List<Meaning> meanings() {
        List<Meaning> all = new ArrayList<>();
        if (clock.isEmpty()) {
            all.add(new Meaning(
                    Optional.empty(),
                    Optional.empty(),
                    date.isPresent(),
                    parts(),
                    NO_TIME + date.map(Found::cost).orElse(NO_DATE)));
            return all;
        }
        Clock c = clock.get().value();
        all.add(meaning(c, 0, 0));
        if (!c.halfKnown()) {
            all.add(meaning(c, 12, 0.4));
        }
        return all;
    }

    private Meaning meaning(Clock c, int shift, double extra) {
        java.time.LocalTime time = c.time().plusHours(shift);
        LocalDateTime best = null;
        double cost = Double.MAX_VALUE;
        for (LocalDate day : days()) {
            LocalDateTime wall = converted(day.atTime(time));
            double distance = distance(wall);
            if (distance < cost) {
                cost = distance;
                best = wall;
            }
        }
        double sum = cost + extra + clock.get().cost() + date.map(Found::cost).orElse(NO_DATE);
        Optional<String> stated = zone.map(z -> z.value().getId());
        return new Meaning(Optional.ofNullable(best), stated, date.isPresent(), parts(), sum);
    }

    private List<LocalDate> days() {
        return date.map(d -> List.of(d.value()))
                .orElse(List.of(
                        arrival.day(), arrival.day().minusDays(1), arrival.day().plusDays(1)));
    }

    private LocalDateTime converted(LocalDateTime wall) {
        return zone.map(z -> wall.atZone(z.value()).withZoneSameInstant(home).toLocalDateTime())
                .orElse(wall);
    }

    /** A test is usually 15 minutes to an hour before the message, never much after it. */
    private double distance(LocalDateTime wall) {
        double hours = Duration.between(wall, arrival.wall()).toMinutes() / 60.0;
        if (hours < -0.25) {
            return Math.min(4, 0.6 - hours);
        }
        return hours <= 1.5 ? 0 : Math.min(3, 0.15 * (hours - 1.5));
    }

    private Map<String, Found<?>> parts() {
        Map<String, Found<?>> parts = new TreeMap<>();
        clock.ifPresent(c -> parts.put("time", c));
        date.ifPresent(d -> parts.put("date", d));
        zone.ifPresent(z -> parts.put("zone", z));
        return parts;
    }
}
