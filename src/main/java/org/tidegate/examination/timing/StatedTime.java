package org.tidegate.examination.timing;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.SubjectReading;
import org.tidegate.message.HeaderDate;

/**
 * A test time that a participant stated, set against the clinic's own record.
 *
 * @param source where the participant wrote it
 * @param written as written, day and all
 * @param time the reading of it that fits the record, else the plain one
 * @param fits whether it lies within the record's bounds
 * @param leansOn what that reading leans on
 */
record StatedTime(Source source, LocalDateTime written, Instant time, boolean fits, List<Assumption> leansOn) {

    /** Where the participant wrote it. */
    enum Source {
        MESSAGE("stated test time", "the participant wrote "),
        CASSETTE("cassette, as the reader transcribed it", "the participant wrote on the cassette ");

        private final String place;
        private final String words;

        Source(String place, String words) {
            this.place = place;
            this.words = words;
        }

        String place() {
            return place;
        }
    }

    /** Bounds of the clinic's record and the zone in which walls are read. */
    interface ClinicRecord {
        boolean admits(Instant time);

        List<Instant> instants(LocalDateTime wall);
    }

    /** The time on the cassette: a wall of the clinic's zone on the day of the test, or on a twelve-hour clock. */
    static StatedTime onCassette(LocalTime time, LocalDate day, ClinicRecord record) {
        List<LocalDateTime> walls = time.getHour() < 12
                ? List.of(day.atTime(time), day.atTime(time.plusHours(12)))
                : List.of(day.atTime(time));
        return best(walls.stream()
                        .flatMap(w -> record.instants(w).stream())
                        .map(t -> candidate(
                                Source.CASSETTE, day.atTime(time), t, record, List.of(Assumptions.STATED_IS_TIMER)))
                        .toList())
                .orElseThrow();
    }

    static Optional<StatedTime> of(Optional<SubjectReading> reading, Optional<HeaderDate> date, ClinicRecord record) {
        return reading.flatMap(r -> r.testTime().flatMap(wall -> of(r, wall, date, record)));
    }

    private static Optional<StatedTime> of(
            SubjectReading reading, LocalDateTime wall, Optional<HeaderDate> date, ClinicRecord record) {
        List<StatedTime> candidates = new ArrayList<>();
        for (LocalDateTime w : meanings(reading, wall)) {
            for (Instant time : record.instants(w)) {
                candidates.add(candidate(Source.MESSAGE, wall, time, record, List.of(Assumptions.STATED_IS_TIMER)));
            }
        }
        phoneOffset(reading, date)
                .map(o -> candidate(
                        Source.MESSAGE,
                        wall,
                        wall.toInstant(o),
                        record,
                        List.of(Assumptions.STATED_IN_PHONE_ZONE, Assumptions.STATED_IS_TIMER)))
                .ifPresent(candidates::add);
        return best(candidates);
    }

    private static Optional<StatedTime> best(List<StatedTime> candidates) {
        return candidates.stream()
                .filter(StatedTime::fits)
                .findFirst()
                .or(() -> candidates.stream().findFirst());
    }

    private static StatedTime candidate(
            Source source, LocalDateTime written, Instant time, ClinicRecord record, List<Assumption> leansOn) {
        return new StatedTime(source, written, time, record.admits(time), leansOn);
    }

    /** {@code the participant wrote 07:03:00 (+01:00)}; {@code … wrote 15:49, which means 14:49:00 (+01:00)}. */
    String words(Wording wording) {
        boolean plain = written.toLocalTime().equals(time.atZone(wording.zone()).toLocalTime());
        return source.words + (plain ? "" : written.toLocalTime() + ", which means ") + wording.time(time);
    }

    /** A wall without a date may belong to the day before or after; an hour up to twelve may be meant on a twelve-hour clock. */
    private static List<LocalDateTime> meanings(SubjectReading reading, LocalDateTime wall) {
        List<LocalDateTime> days =
                reading.dateStated() ? List.of(wall) : List.of(wall, wall.minusDays(1), wall.plusDays(1));
        List<LocalDateTime> all = new ArrayList<>(days);
        if (wall.getHour() < 12) {
            days.forEach(day -> all.add(day.plusHours(12)));
        }
        return all;
    }

    private static Optional<ZoneOffset> phoneOffset(SubjectReading reading, Optional<HeaderDate> date) {
        return reading.statedZone().isPresent() ? Optional.empty() : date.flatMap(HeaderDate::offset);
    }
}
