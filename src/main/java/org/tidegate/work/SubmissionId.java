package org.tidegate.work;

/**
 * A submission: the number of its first message in the order of taking, so that it does not depend on who finished first.
 *
 * @param value equals {@link MessageId#value} of the first message
 */
public record SubmissionId(long value) implements Comparable<SubmissionId> {

    public static SubmissionId startedBy(MessageId first) {
        return new SubmissionId(first.value());
    }

    @Override
    public int compareTo(SubmissionId other) {
        return Long.compare(value, other.value);
    }

    /** As people say it: {@code S-17}. */
    @Override
    public String toString() {
        return "S-" + value;
    }
}
