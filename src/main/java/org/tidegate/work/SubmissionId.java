package org.tidegate.work;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A submission: the number of its first message in the order of taking, so that it does not depend on who finished first. A
 * person may split a message among several tests: each further one is a part of it, counted from 1.
 *
 * @param value {@link MessageId#value} of the first message, plus {@code 10¹²} times the number of the part
 */
public record SubmissionId(long value) implements Comparable<SubmissionId> {

    private static final long PARTS = 1_000_000_000_000L;
    private static final Pattern WRITTEN = Pattern.compile("(?:[Ss]-)?([0-9]{1,12})(?:\\.([1-9][0-9]{0,5}))?");

    public static SubmissionId startedBy(MessageId first) {
        return new SubmissionId(first.value());
    }

    /** @param number from 1 */
    public static SubmissionId partOf(MessageId message, int number) {
        return new SubmissionId(number * PARTS + message.value());
    }

    /** Reads {@code S-17}, {@code 17} or {@code S-17.1}; empty for anything else. */
    public static Optional<SubmissionId> parse(String written) {
        Matcher m = WRITTEN.matcher(written);
        return m.matches()
                ? Optional.of(new SubmissionId(
                        Long.parseLong(m.group(1)) + (m.group(2) == null ? 0 : Long.parseLong(m.group(2)) * PARTS)))
                : Optional.empty();
    }

    @Override
    public int compareTo(SubmissionId other) {
        return Long.compare(value, other.value);
    }

    /** As people say it: {@code S-17}, a part of it {@code S-17.1}. */
    @Override
    public String toString() {
        long part = value / PARTS;
        return "S-" + value % PARTS + (part == 0 ? "" : "." + part);
    }
}
