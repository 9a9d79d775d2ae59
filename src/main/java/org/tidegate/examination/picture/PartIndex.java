package org.tidegate.examination.picture;

import java.util.Arrays;

/** Which entries have a given value in one part of their hash: chained lists in two flat arrays. */
final class PartIndex {

    private final int[] heads;
    private int[] nexts = new int[256];

    PartIndex(int values) {
        heads = new int[values];
        Arrays.fill(heads, -1);
    }

    void add(int value, int entry) {
        if (nexts.length <= entry) {
            nexts = Arrays.copyOf(nexts, Math.max(entry + 1, nexts.length * 2));
        }
        nexts[entry] = heads[value];
        heads[value] = entry;
    }

    /** First entry with the value, or −1. */
    int first(int value) {
        return heads[value];
    }

    /** The entry after that one, or −1. */
    int next(int entry) {
        return nexts[entry];
    }
}
