package org.tidegate.examination.subject;

import java.time.LocalDate;
import java.util.List;

/**
 * A date as stated, with everything that it may mean.
 *
 * @param options at least one
 */
record StatedDate(List<Option> options) implements Candidate.Value {

    sealed interface Option permits Calendar, Relative {}

    /**
     * A day of the calendar.
     *
     * @param year 0 where none was written
     * @param month 0 where only the day was
     */
    record Calendar(int year, int month, int day, double cost) implements Option {}

    /**
     * A day counted from the arrival.
     *
     * @param days from the day of arrival
     * @param nightOnly the night before: yesterday's evening or today's small hours
     * @param hours of the day that the word names, as a mask, 0 for all: this evening
     */
    record Relative(int days, boolean nightOnly, int hours, double cost) implements Option {}

    static StatedDate of(Option... options) {
        return new StatedDate(List.of(options));
    }

    static boolean valid(int year, int month, int day) {
        return month >= 1
                && month <= 12
                && day >= 1
                && day <= LocalDate.of(year == 0 ? 2000 : year, month, 1).lengthOfMonth();
    }
}
