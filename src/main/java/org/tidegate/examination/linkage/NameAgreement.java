package org.tidegate.examination.linkage;

import java.util.Optional;

/**
 * How a stated name agrees with a booked one.
 *
 * @param given level name as in the rules; empty where the booking has no such name
 * @param family likewise
 */
record NameAgreement(Optional<String> given, Optional<String> family) {

    static final String EXACT = "exact";
    static final String FIRST_ONLY = "first_only";
    static final String SECOND_ONLY = "second_only";
    static final String DROPPED = "dropped";
    static final String PART = "part";
    static final String INITIAL = "initial";
    static final String DIFFERENT = "different";
    static final String UNSTATED = "unstated";

    /** A stated word stands against a booked one: this is hardly the same person. */
    boolean contradicted() {
        return is(given, DIFFERENT) || is(given, PART) || is(family, DIFFERENT) || is(family, PART);
    }

    boolean familyAgrees() {
        return family.isPresent() && !is(family, DIFFERENT) && !is(family, UNSTATED);
    }

    boolean givenAgreesInFull() {
        return given.isPresent() && !givenIsOpen() && !is(given, DIFFERENT) && !is(given, PART);
    }

    boolean givenIsOpen() {
        return is(given, UNSTATED) || is(given, INITIAL);
    }

    private static boolean is(Optional<String> level, String name) {
        return level.isPresent() && level.get().equals(name);
    }
}
