package org.tidegate.examination.picture;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.function.IntConsumer;

/** Which entries are the same bytes: by the first 64 bits of their keyed hash, in which two of a million files agree once in 37 million times. */
final class ExactIndex {

    private static final int LEAST = 1 << 12;

    private final LongColumn marks = new LongColumn();
    private IntColumn nexts = new IntColumn();
    private int[] heads = empty(LEAST);

    private static int[] empty(int size) {
        int[] heads = new int[size];
        Arrays.fill(heads, -1);
        return heads;
    }

    /** @param exact an HMAC, hexadecimal; adds the next entry, numbered from 0 */
    void add(String exact) {
        if (marks.size() == heads.length) {
            grow();
        }
        long mark = mark(exact);
        int slot = slot(mark);
        marks.add(mark);
        nexts.add(heads[slot]);
        heads[slot] = marks.size() - 1;
    }

    /** Chains of the longer table are built anew: their order does not matter. */
    private void grow() {
        heads = empty(2 * heads.length);
        IntColumn again = new IntColumn();
        for (int e = 0; e < marks.size(); e++) {
            int slot = slot(marks.get(e));
            again.add(heads[slot]);
            heads[slot] = e;
        }
        nexts = again;
    }

    void same(String exact, IntConsumer found) {
        long mark = mark(exact);
        for (int e = heads[slot(mark)]; e >= 0; e = nexts.get(e)) {
            if (marks.get(e) == mark) {
                found.accept(e);
            }
        }
    }

    private int slot(long mark) {
        return (int) (mark & (heads.length - 1));
    }

    private static long mark(String exact) {
        return HexFormat.fromHexDigitsToLong(exact, 0, Math.min(16, exact.length()));
    }
}
