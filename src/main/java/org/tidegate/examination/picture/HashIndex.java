package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Finds hashes near a given one: candidates by their coarse bits, of which the finer ones confirm the same picture. Multi-index hashing (Norouzi, Punjani, Fleet 2012): of 16 parts of the coarse bits of two hashes that differ in
 * no more than 31, at least one differs in no more than one bit, so looking up each part and its close neighbours misses none of them. Looking
 * up the parts alone misses none that differ in no more than 15, and few of the others, at a seventeenth of the cost.
 */
final class HashIndex {

    /** Coarse bits that may differ at most. */
    static final int COARSE_WITHIN = 31;

    private static final int PARTS = 16;
    private static final int PART_VALUES = 1 << 16;

    private static final int[] AS_IT_IS = {0};

    /** A part as it is, and with any one bit flipped. */
    private static final int[] AND_NEIGHBOURS = IntStream.concat(
                    IntStream.of(0), IntStream.range(0, 16).map(i -> 1 << i))
            .toArray();

    private final List<PartIndex> parts = new ArrayList<>();
    private final LongColumn words = new LongColumn();

    HashIndex() {
        for (int p = 0; p < PARTS; p++) {
            parts.add(new PartIndex(PART_VALUES));
        }
    }

    /** Entries are numbered from 0 in the order of adding. */
    void add(long[] hash) {
        for (long word : hash) {
            words.add(word);
        }
        for (int p = 0; p < PARTS; p++) {
            parts.get(p).add(HashWords.part(hash, p));
        }
    }

    /**
     * Adds all near entries to the map, each with the fewest finer bits in which it differed so far.
     *
     * @param within finer bits that may differ at most
     */
    void allNear(long[] hash, int within, Map<Integer, Integer> found) {
        look(hash, AND_NEIGHBOURS, within, found);
    }

    /** The same, but may miss entries that differ in 16 coarse bits or more. */
    void mostNear(long[] hash, int within, Map<Integer, Integer> found) {
        look(hash, AS_IT_IS, within, found);
    }

    private void look(long[] hash, int[] flips, int within, Map<Integer, Integer> found) {
        for (int p = 0; p < PARTS; p++) {
            int part = HashWords.part(hash, p);
            PartIndex index = parts.get(p);
            for (int flip : flips) {
                for (int e = index.first(part ^ flip); e >= 0; e = index.next(e)) {
                    judge(hash, e, within, found);
                }
            }
        }
    }

    private void judge(long[] hash, int entry, int within, Map<Integer, Integer> found) {
        int first = entry * HashWords.WORDS;
        long[] block = words.block(first);
        int at = LongColumn.offset(first);
        if (HashWords.coarse(hash, block, at) <= COARSE_WITHIN) {
            int fine = HashWords.fine(hash, block, at);
            if (fine <= within) {
                found.merge(entry, fine, Math::min);
            }
        }
    }
}
