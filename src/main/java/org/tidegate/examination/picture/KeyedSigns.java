package org.tidegate.examination.picture;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.spec.IvParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Fingerprints fields under a secret key: on which side of each of 512 secret planes a field lies. Two fields differ in as large a share of their bits as the
 * angle between them is of a half turn (Charikar 2002, Similarity estimation techniques from rounding algorithms; from memory); who does not know the planes
 * learns nothing from one.
 */
final class KeyedSigns {

    static final int BITS = 64 * HashWords.WORDS;

    /** A bit for each cell of each plane: which way it counts. */
    private final byte[] planes;

    private final int cells;

    /** @param cells numbers of a field */
    KeyedSigns(byte[] key, int cells) {
        this.cells = cells;
        this.planes = stream(key, (BITS * cells + 7) / 8);
    }

    /** 128 hexadecimal digits. */
    String of(float[] field) {
        long[] words = new long[HashWords.WORDS];
        for (int b = 0; b < BITS; b++) {
            double sum = 0;
            for (int i = 0, at = b * cells; i < cells; i++, at++) {
                boolean counts = (planes[at >> 3] >> (at & 7) & 1) == 0;
                sum += counts ? field[i] : -field[i];
            }
            words[b / 64] |= sum > 0 ? 1L << (b % 64) : 0;
        }
        return HashWords.hex(words);
    }

    /** AES in counter mode (NIST SP 800-38A, section 6.5) under a key derived for this purpose alone. */
    private static byte[] stream(byte[] key, int length) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            byte[] own = mac.doFinal("written on cassettes".getBytes(StandardCharsets.UTF_8));
            Cipher cipher = Cipher.getInstance("AES/CTR/NoPadding");
            cipher.init(Cipher.ENCRYPT_MODE, new SecretKeySpec(own, "AES"), new IvParameterSpec(new byte[16]));
            return cipher.doFinal(new byte[length]);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("AES-CTR or HmacSHA256 is missing on this platform", e);
        }
    }
}
