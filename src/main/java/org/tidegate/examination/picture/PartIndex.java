package org.tidegate.examination.picture;

import java.util.Arrays;

/** Which entries have a given value in one part of their hash: chained lists in two flat tables. */
final class PartIndex {

    private final int[] heads;
    private final IntColumn nexts = new IntColumn();

    PartIndex(int values) {
        heads = new int[values];
        Arrays.fill(heads, -1);
    }

    /** Adds the next entry; entries are numbered from 0. */
    void add(int value) {
        int entry = nexts.size();
        nexts.add(heads[value]);
        heads[value] = entry;
    }

    /** First entry with the value, or −1. */
    int first(int value) {
        return heads[value];
    }

    /** The entry after that one, or −1. */
    int next(int entry) {
        return nexts.get(entry);
    }
}
