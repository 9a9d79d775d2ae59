package org.tidegate.examination.picture;

import java.nio.ByteBuffer;
import java.util.HexFormat;

/** 256-bit hashes as four words. */
final class HashWords {

    private HashWords() {}

    /**
     * @param hex 64 hexadecimal digits
     * @throws IllegalArgumentException where it is not
     */
    static long[] of(String hex) {
        if (hex.length() != PerceptualHash.BITS / 4) {
            throw new IllegalArgumentException("A fingerprint has 64 hexadecimal digits, not " + hex.length() + ".");
        }
        long[] words = new long[4];
        ByteBuffer.wrap(HexFormat.of().parseHex(hex)).asLongBuffer().get(words);
        return words;
    }

    static String hex(long[] words) {
        ByteBuffer buffer = ByteBuffer.allocate(PerceptualHash.BITS / 8);
        for (long word : words) {
            buffer.putLong(word);
        }
        return HexFormat.of().formatHex(buffer.array());
    }

    /** The part-th 16 bits. */
    static int part(long[] hash, int part) {
        return (int) (hash[part / 4] >>> (16 * (part % 4))) & 0xFFFF;
    }

    /** Number of differing bits. */
    static int distance(long[] hash, long[] others, int at) {
        return Long.bitCount(hash[0] ^ others[at])
                + Long.bitCount(hash[1] ^ others[at + 1])
                + Long.bitCount(hash[2] ^ others[at + 2])
                + Long.bitCount(hash[3] ^ others[at + 3]);
    }
}
