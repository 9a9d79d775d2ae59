package org.tidegate.examination.subject;

/**
 * Tokens {@code from} (inclusive) to {@code to} (exclusive) read as a field.
 *
 * @param cost lower is better; about 1 for something unusual, 2 for something doubtful
 */
record Candidate(Field field, int from, int to, double cost, Value value) {

    /** What a line is made of. */
    enum Field {
        NAME(1),
        TIME(2),
        DATE(4),
        WEEKDAY(8),
        PERIOD(16),
        CLINIC(32),
        REFERENCE(64),
        MARK(128),
        BIRTH(256),
        CLAIM(0),
        /** Read as nothing of interest: signs, fillers, other numbers, further times. */
        SKIP(0);

        private final int bit;

        Field(int bit) {
            this.bit = bit;
        }

        /** What is set where the field is taken; 0 for fields that may repeat. */
        int bit() {
            return bit;
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
