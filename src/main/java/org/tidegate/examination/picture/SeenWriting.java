package org.tidegate.examination.picture;

import java.util.Set;
import java.util.TreeSet;

/**
 * Finds cassettes on which the same was written before. Every entry is compared: there is one a marked cassette, not eight a picture. Not safe for use by
 * several threads at once.
 */
public final class SeenWriting {

    private static final long NOBODY = -1;

    private final int within;
    private final LongColumn words = new LongColumn();
    private final LongColumn owners = new LongColumn();

    /** @param within bits of 512 that may differ where two cassettes count as the same */
    public SeenWriting(int within) {
        this.within = within;
    }

    /** @param written 128 hexadecimal digits */
    public void add(long owner, String written) {
        owners.add(owner);
        for (long word : HashWords.of(written)) {
            words.add(word);
        }
    }

    /** Forgets every cassette of an owner. */
    public void forget(long owner) {
        for (int i = 0; i < owners.size(); i++) {
            if (owners.get(i) == owner) {
                owners.set(i, NOBODY);
            }
        }
    }

    public Set<Long> find(String written) {
        long[] asked = HashWords.of(written);
        Set<Long> found = new TreeSet<>();
        for (int e = 0; e < owners.size(); e++) {
            int first = e * HashWords.WORDS;
            long[] block = words.block(first);
            int at = LongColumn.offset(first);
            if (HashWords.coarse(asked, block, at) + HashWords.fine(asked, block, at) <= within) {
                found.add(owners.get(e));
            }
        }
        found.remove(NOBODY);
        return found;
    }
}
