package org.tidegate.rules;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.rules.HourRules.Shift;

/**
 * Staffed times around every edge. In 2026 London's clocks go forward on 29 March and back on 25 October, both at 01:00 UTC (Summer
 * Time Order 2002, SI 2002/262: the last Sundays of March and October at one o'clock Greenwich mean time).
 */
class ServiceHoursTest {

    private static final List<DayOfWeek> WEEK = List.of(MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY);

    /** Weekdays 07:00–19:00, and from Saturday night into Sunday's early hours. */
    private static final ServiceHours HOURS = hours(
            new Shift(WEEK, LocalTime.of(7, 0), LocalTime.of(19, 0)),
            new Shift(List.of(SATURDAY), LocalTime.of(22, 0), LocalTime.of(1, 30)));

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            2026-05-04T06:59:59+01:00; false; 2026-05-04T07:00+01:00; 2026-05-03T01:30+01:00
            2026-05-04T07:00+01:00;    true;  2026-05-05T07:00+01:00; 2026-05-03T01:30+01:00
            2026-05-04T18:59:59+01:00; true;  2026-05-05T07:00+01:00; 2026-05-03T01:30+01:00
            2026-05-04T19:00+01:00;    false; 2026-05-05T07:00+01:00; 2026-05-04T19:00+01:00
            2026-05-08T23:00+01:00;    false; 2026-05-09T22:00+01:00; 2026-05-08T19:00+01:00
            2026-05-10T01:00+01:00;    true;  2026-05-11T07:00+01:00; 2026-05-08T19:00+01:00
            2026-03-29T00:59:59Z;      true;  2026-03-30T07:00+01:00; 2026-03-27T19:00Z
            2026-03-29T01:29:59Z;      true;  2026-03-30T07:00+01:00; 2026-03-27T19:00Z
            2026-03-29T01:30Z;         false; 2026-03-30T07:00+01:00; 2026-03-29T01:30Z
            2026-10-25T00:40Z;         true;  2026-10-26T07:00Z;      2026-10-23T19:00+01:00
            2026-10-25T01:29:59Z;      true;  2026-10-26T07:00Z;      2026-10-23T19:00+01:00
            2026-10-25T01:30Z;         false; 2026-10-26T07:00Z;      2026-10-25T01:30Z
            """)
    void knowsWhenSomebodyIsThere(String at, boolean open, String next, String last) {
        Instant t = instant(at);
        assertThat(HOURS.open(t)).as("open at %s", at).isEqualTo(open);
        assertThat(HOURS.nextStart(t)).contains(instant(next));
        assertThat(HOURS.lastEnd(t)).contains(instant(last));
    }

    /** The hour that comes twice is staffed twice. */
    @ParameterizedTest
    @CsvSource({"2026-05-09T22:00+01:00, PT3H30M", "2026-03-28T22:00+00:00, PT3H30M", "2026-10-24T22:00+01:00, PT4H30M"
    })
    void countsTheHoursThatPass(String start, Duration length) {
        ServiceHours.Span span = HOURS.at(instant(start)).orElseThrow();
        assertThat(Duration.between(span.from(), span.until())).isEqualTo(length);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-05-04T09:00+01:00, PT30M, 2026-05-04T09:30+01:00",
        "2026-05-04T03:00+01:00, PT30M, 2026-05-04T07:30+01:00",
        "2026-05-04T18:50+01:00, PT30M, 2026-05-05T07:20+01:00",
        "2026-05-08T19:00+01:00, PT30M, 2026-05-09T22:30+01:00",
        "2026-05-04T18:30+01:00, PT30M, 2026-05-04T19:00+01:00"
    })
    void promisesInStaffedTime(String from, Duration promise, String until) {
        assertThat(HOURS.after(instant(from), promise)).isEqualTo(instant(until));
    }

    @Test
    void alwaysIsAlways() {
        ServiceHours always =
                hours(new Shift(List.copyOf(EnumSet.allOf(DayOfWeek.class)), LocalTime.MIDNIGHT, LocalTime.MIDNIGHT));
        Instant t = Instant.parse("2026-10-25T01:30:00Z");
        assertThat(always.open(t)).isTrue();
        assertThat(always.nextStart(t)).isEmpty();
        assertThat(always.lastEnd(t)).isEmpty();
    }

    @Test
    void shiftsThatTouchAreOne() {
        ServiceHours two = hours(
                new Shift(List.of(SUNDAY), LocalTime.of(6, 0), LocalTime.of(12, 0)),
                new Shift(List.of(SUNDAY), LocalTime.of(12, 0), LocalTime.of(18, 0)));
        assertThat(two.at(Instant.parse("2026-05-10T09:00:00Z")).orElseThrow().until())
                .isEqualTo(Instant.parse("2026-05-10T17:00:00Z"));
    }

    private static Instant instant(String text) {
        return OffsetDateTime.parse(text).toInstant();
    }

    private static ServiceHours hours(Shift... shifts) {
        return ServiceHours.of(new HourRules(
                ZoneId.of("Europe/London"),
                List.of(shifts),
                Optional.empty(),
                "https://tidegate.skarrasound.example",
                Optional.empty()));
    }
}
