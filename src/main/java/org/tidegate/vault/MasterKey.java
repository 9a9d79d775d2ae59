package org.tidegate.vault;

import com.google.crypto.tink.subtle.AesGcmJce;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** The key that wraps all others. It lies in one file that backups of the store do not hold. */
public final class MasterKey {

    public static final String FILE = "master.key";
    private static final int LENGTH = 32;

    private final byte[] key;

    private MasterKey(byte[] key) {
        this.key = key;
    }

    /** Reads the key file, or makes a new one where there is none. */
    public static MasterKey in(DurableFiles folder, SecureRandom random) throws IOException {
        if (!folder.exists(FILE)) {
            byte[] fresh = new byte[LENGTH];
            random.nextBytes(fresh);
            byte[] text = Base64.getEncoder().encode(fresh);
            folder.write(FILE, out -> out.write(text));
        }
        try (InputStream in = folder.open(FILE)) {
            byte[] key = Base64.getDecoder().decode(new String(in.readAllBytes(), StandardCharsets.US_ASCII).strip());
            if (key.length != LENGTH) {
                throw new IOException(FILE + " holds " + key.length + " bytes, not " + LENGTH);
            }
            return new MasterKey(key);
        } catch (IllegalArgumentException e) {
            throw new IOException(FILE + " is not base64", e);
        }
    }

    /** @param purpose bound to the wrapped bytes: unwrapping under another purpose fails */
    public byte[] wrap(byte[] secret, String purpose) {
        try {
            return new AesGcmJce(key).encrypt(secret, purpose.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("AES-256-GCM is missing on this platform", e);
        }
    }

    /** @throws IOException where the bytes were wrapped by another master key, for another purpose, or changed */
    public byte[] unwrap(byte[] wrapped, String purpose) throws IOException {
        try {
            return new AesGcmJce(key).decrypt(wrapped, purpose.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException e) {
            throw new IOException("the master key does not open what was kept for " + purpose, e);
        }
    }

    /** HMAC-SHA-256 under a key derived for one purpose: tells equal bytes apart without keeping them. */
    public byte[] mark(String purpose, byte[] bytes) {
        return hmac(derive(purpose), bytes);
    }

    /** A key of 32 bytes for one purpose, always the same from the same master key. */
    public byte[] derive(String purpose) {
        return hmac(key, purpose.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] hmac(byte[] key, byte[] bytes) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return mac.doFinal(bytes);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has HmacSHA256", e);
        }
    }
}
