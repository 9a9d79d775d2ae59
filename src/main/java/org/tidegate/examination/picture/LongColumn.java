package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.List;

/** Longs in the order of adding, in blocks: it grows without copying and wastes less than one block. */
final class LongColumn {

    private static final int BITS = 14;
    private static final int MASK = (1 << BITS) - 1;

    private final List<long[]> blocks = new ArrayList<>();
    private int size;

    int size() {
        return size;
    }

    void add(long value) {
        if (size == blocks.size() << BITS) {
            blocks.add(new long[1 << BITS]);
        }
        set(size++, value);
    }

    long get(int at) {
        return blocks.get(at >> BITS)[at & MASK];
    }

    void set(int at, long value) {
        blocks.get(at >> BITS)[at & MASK] = value;
    }

    /** The block in which an entry lies, and where in it, for loops that cannot afford a call a value. */
    long[] block(int at) {
        return blocks.get(at >> BITS);
    }

    static int offset(int at) {
        return at & MASK;
    }
}
