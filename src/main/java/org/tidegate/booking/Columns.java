package org.tidegate.booking;

import java.util.Set;
import java.util.TreeSet;

/** The columns of a book; every format uses the same names. */
final class Columns {

    static final Set<String> REQUIRED = Set.of(
            "ref",
            "given_name",
            "family_name",
            "date_of_birth",
            "email",
            "clinic",
            "slot_start",
            "slot_end",
            "kit",
            "lot");

    static final Set<String> OPTIONAL = Set.of(
            "attempt",
            "timer_start",
            "observed",
            "mark",
            "language",
            "phone",
            "needed_by",
            "lot_expires",
            "guardian",
            "disclose_to",
            "note");

    private Columns() {}

    static boolean known(String name) {
        return REQUIRED.contains(name) || OPTIONAL.contains(name);
    }

    /** Required columns that are not among {@code present}, sorted. */
    static Set<String> missing(Set<String> present) {
        Set<String> missing = new TreeSet<>(REQUIRED);
        missing.removeAll(present);
        return missing;
    }
}
