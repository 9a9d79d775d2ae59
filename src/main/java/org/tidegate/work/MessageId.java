package org.tidegate.work;

/**
 * A message as taken: its place in the order of taking, from 1.
 *
 * @param value unique in the store, never used again
 */
public record MessageId(long value) implements Comparable<MessageId> {

    @Override
    public int compareTo(MessageId other) {
        return Long.compare(value, other.value);
    }
}
