package org.tidegate.examination.subject;

/**
 * A candidate: tokens {@code from} (inclusive) to {@code to} (exclusive) read as a value.
 *
 * @param cost lower is better
 */
record Found<T>(T value, int from, int to, double cost) {

    boolean overlaps(Found<?> other) {
        return from < other.to && other.from < to;
    }
}
