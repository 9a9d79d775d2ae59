package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;
import org.tidegate.finding.PictureFinding.Fingerprints;

/**
 * Fingerprints pictures under a secret key. The perceptual hash's bits are shuffled and flipped in a way that the key gives, so that who reads
 * the store cannot compare it with hashes of known pictures, while distances between pictures of one store stay what they were.
 */
final class Fingerprinter {

    /** Below this there is too little to see for a perceptual hash to mean anything; found by trying plain tables and walls. */
    private static final int MIN_QUALITY = 8;

    private final byte[] key;
    private final int[] places;
    private final long[] mask;

    /** Made for the first marked cassette: most messages show none or one. */
    private @Nullable KeyedSigns signs;

    /**
     * @param key at least 16 bytes
     * @throws IllegalArgumentException where the key is shorter
     */
    Fingerprinter(byte[] key) {
        if (key.length < 16) {
            throw new IllegalArgumentException("The picture key has " + key.length + " bytes; it needs 16 or more.");
        }
        this.key = key.clone();
        this.places = shuffle();
        this.mask = words(ByteBuffer.allocate(Long.BYTES * HashWords.WORDS)
                .put(hmac("coarse".getBytes(StandardCharsets.UTF_8)))
                .put(hmac("fine".getBytes(StandardCharsets.UTF_8)))
                .array());
    }

    Fingerprints of(byte[] content, Optional<BufferedImage> image) {
        Optional<PerceptualHash> hash =
                image.map(Luma::of).map(PerceptualHash::of).filter(h -> h.quality() >= MIN_QUALITY);
        return new Fingerprints(
                HexFormat.of().formatHex(hmac(new byte[1], content)),
                hash.map(h -> hex(h.whole())),
                hash.map(h -> hex(h.centre())),
                hash.map(h -> hex(h.turned())).orElse(List.of()),
                hash.map(h -> hex(h.cropped())).orElse(List.of()),
                List.of());
    }

    /** What is written on a cassette, see {@link Written}. */
    String of(float[] written) {
        KeyedSigns known = signs == null ? new KeyedSigns(key, Written.CELLS) : signs;
        signs = known;
        return known.of(written);
    }

    private List<String> hex(List<long[]> views) {
        return views.stream().map(this::hex).toList();
    }

    /** Coarse and finer bits are shuffled alike, but not into each other: they are compared apart. */
    private String hex(long[] bits) {
        long[] out = mask.clone();
        for (int k = 0; k < 2 * Spectrum.BITS; k++) {
            int to = k / Spectrum.BITS * Spectrum.BITS + places[k % Spectrum.BITS];
            long bit = (bits[k / 64] >>> (k % 64)) & 1;
            out[to / 64] ^= bit << (to % 64);
        }
        return HashWords.hex(out);
    }

    /** Fisher–Yates; a draw is 64 bits wide, so that its bias is beyond notice. */
    private int[] shuffle() {
        int[] p = new int[Spectrum.BITS];
        for (int i = 0; i < p.length; i++) {
            p[i] = i;
        }
        for (int i = p.length - 1; i > 0; i--) {
            byte[] drawn = hmac(("place " + i).getBytes(StandardCharsets.UTF_8));
            int j = (int) Long.remainderUnsigned(ByteBuffer.wrap(drawn).getLong(), i + 1L);
            int kept = p[i];
            p[i] = p[j];
            p[j] = kept;
        }
        return p;
    }

    private static long[] words(byte[] bytes) {
        long[] words = new long[bytes.length / 8];
        ByteBuffer.wrap(bytes).asLongBuffer().get(words);
        return words;
    }

    private byte[] hmac(byte[]... data) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            for (byte[] part : data) {
                mac.update(part);
            }
            return mac.doFinal();
        } catch (GeneralSecurityException e) {
            // Every Java platform has to provide it (java.security.Provider, Mac).
            throw new IllegalStateException(e);
        }
    }
}
