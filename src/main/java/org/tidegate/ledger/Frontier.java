package org.tidegate.ledger;

import java.util.ArrayList;
import java.util.List;

/**
 * The right edge of the tree: enough to append leaves and tell the root without the leaves before.
 *
 * @param size leaves so far
 * @param peaks roots of the complete subtrees, largest first: one for each bit set in {@code size}
 */
public record Frontier(long size, List<Hash> peaks) {

    public static final Frontier EMPTY = new Frontier(0, List.of());

    public Frontier {
        peaks = List.copyOf(peaks);
        if (peaks.size() != Long.bitCount(size)) {
            throw new IllegalArgumentException(peaks.size() + " peaks do not make a tree of " + size + " leaves");
        }
    }

    public Frontier append(Hash leaf) {
        List<Hash> next = new ArrayList<>(peaks);
        Hash carried = leaf;
        for (long rest = size; (rest & 1) == 1; rest >>= 1) {
            carried = Hash.node(next.remove(next.size() - 1), carried);
        }
        next.add(carried);
        return new Frontier(size + 1, next);
    }

    public Hash root() {
        if (peaks.isEmpty()) {
            return Hash.EMPTY;
        }
        Hash root = peaks.get(peaks.size() - 1);
        for (int i = peaks.size() - 2; i >= 0; i--) {
            root = Hash.node(peaks.get(i), root);
        }
        return root;
    }
}
