package org.tidegate.examination.subject;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * A time of day as stated.
 *
 * @param minutes since midnight, as written
 * @param halfKnown false where it may be meant on a twelve-hour clock
 * @param zone the zone that stands beside it
 * @param zoneText that zone as written
 */
record ClockTime(int minutes, boolean halfKnown, Optional<ZoneId> zone, Optional<String> zoneText)
        implements Candidate.Value {

    private static final int HALF_DAY = 12 * 60;
    private static final int DAY = 24 * 60;

    static ClockTime of(int minutes, boolean halfKnown) {
        return new ClockTime(Math.floorMod(minutes, DAY), halfKnown, Optional.empty(), Optional.empty());
    }

    ClockTime in(ZoneId stated, String text) {
        return new ClockTime(minutes, halfKnown, Optional.of(stated), Optional.of(text));
    }

    /** Moved into the half of the day whose hours the mask covers best. */
    ClockTime within(int hours) {
        if (halfKnown || hours == 0) {
            return this;
        }
        int other = (minutes + HALF_DAY) % DAY;
        int chosen = distance(other, hours) < distance(minutes, hours) ? other : minutes;
        return new ClockTime(chosen, true, zone, zoneText);
    }

    private static int distance(int minutes, int hours) {
        int best = 24;
        for (int h = 0; h < 24; h++) {
            if ((hours >> h & 1) == 1) {
                int apart = Math.abs(h - minutes / 60);
                best = Math.min(best, Math.min(apart, 24 - apart));
            }
        }
        return best;
    }

    /** The wall times it can mean, as written first. */
    List<LocalTime> options() {
        LocalTime written = LocalTime.ofSecondOfDay(minutes * 60L);
        return halfKnown ? List.of(written) : List.of(written, written.plusHours(12));
    }
}
