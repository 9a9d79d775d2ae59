package org.tidegate.examination.subject;

/**
 * Tokens {@code from} (inclusive) to {@code to} (exclusive) read as a field.
 *
 * @param cost lower is better; about 1 for something unusual, 2 for something doubtful
 */
record Candidate(Field field, int from, int to, double cost, Value value) {

    /** What a line is made of; each but SKIP occurs once. */
    enum Field {
        NAME,
        TIME,
        DATE,
        WEEKDAY,
        PERIOD,
        CLINIC,
        CLAIM,
        REFERENCE,
        MARK,
        BIRTH,
        /** Read as nothing of interest: signs, fillers, other numbers, further times. */
        SKIP;

        int bit() {
            return this == SKIP || this == CLAIM ? 0 : 1 << ordinal();
        }
    }

    sealed interface Value permits ClockTime, StatedDate, Words, Days {}

    /** Plain text. */
    record Words(String text) implements Value {}

    /** A weekday (ISO) or the hours of a day period, as a mask. */
    record Days(int value) implements Value {}

    static Candidate skip(int from, int to, double cost) {
        return new Candidate(Field.SKIP, from, to, cost, new Words(""));
    }
}
