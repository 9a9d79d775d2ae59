package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.List;

/** Ints in the order of adding, in blocks: it grows without copying and wastes less than one block. */
final class IntColumn {

    private static final int BITS = 14;
    private static final int MASK = (1 << BITS) - 1;

    private final List<int[]> blocks = new ArrayList<>();
    private int size;

    int size() {
        return size;
    }

    void add(int value) {
        if (size == blocks.size() << BITS) {
            blocks.add(new int[1 << BITS]);
        }
        blocks.get(size >> BITS)[size & MASK] = value;
        size++;
    }

    int get(int at) {
        return blocks.get(at >> BITS)[at & MASK];
    }
}
