package org.tidegate.examination.picture;

import java.nio.ByteBuffer;
import java.util.HexFormat;

/** Hashes of eight words: four coarse, four finer. */
final class HashWords {

    static final int WORDS = 8;
    private static final int COARSE_WORDS = 4;

    private HashWords() {}

    /**
     * @param hex 128 hexadecimal digits
     * @throws IllegalArgumentException where it is not
     */
    static long[] of(String hex) {
        if (hex.length() != WORDS * 16) {
            throw new IllegalArgumentException("A fingerprint has 128 hexadecimal digits, not " + hex.length() + ".");
        }
        long[] words = new long[WORDS];
        ByteBuffer.wrap(HexFormat.of().parseHex(hex)).asLongBuffer().get(words);
        return words;
    }

    static String hex(long[] words) {
        ByteBuffer buffer = ByteBuffer.allocate(Long.BYTES * words.length);
        for (long word : words) {
            buffer.putLong(word);
        }
        return HexFormat.of().formatHex(buffer.array());
    }

    /** The part-th 16 of the coarse bits. */
    static int part(long[] hash, int part) {
        return (int) (hash[part / 4] >>> (16 * (part % 4))) & 0xFFFF;
    }

    /** Number of differing coarse bits. */
    static int coarse(long[] hash, long[] others, int at) {
        return differing(hash, others, at, 0);
    }

    /** Number of differing finer bits. */
    static int fine(long[] hash, long[] others, int at) {
        return differing(hash, others, at, COARSE_WORDS);
    }

    private static int differing(long[] hash, long[] others, int at, int from) {
        int bits = 0;
        for (int i = from; i < from + COARSE_WORDS; i++) {
            bits += Long.bitCount(hash[i] ^ others[at + i]);
        }
        return bits;
    }
}
