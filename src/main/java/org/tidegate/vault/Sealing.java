package org.tidegate.vault;

import com.google.crypto.tink.subtle.AesGcmHkdfStreaming;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;

/** AES-256-GCM in authenticated segments of 1 MiB, so that a message of 150 MB needs no memory of its size. */
public final class Sealing {

    private static final int SEGMENT = 1 << 20;
    private static final int SMALL_SEGMENT = 1 << 12;
    private static final int KEY = 32;

    private Sealing() {}

    /** Seals the bytes; the blob's name is authenticated with them, so blobs cannot be exchanged for one another. */
    public static void seal(MessageKey key, byte[] plain, OutputStream to) throws IOException {
        try {
            to.write(plain.length > SEGMENT ? 1 : 0);
            OutputStream sealing = cipher(key, plain.length > SEGMENT).newEncryptingStream(to, associated(key));
            sealing.write(plain);
            sealing.close();
        } catch (GeneralSecurityException e) {
            throw new IOException("blob " + key.blobName() + " cannot be sealed", e);
        }
    }

    /** @throws IOException where the bytes were changed, cut short, or sealed under another key or name */
    public static byte[] open(MessageKey key, InputStream sealed) throws IOException {
        int size = sealed.read();
        if (size != 0 && size != 1) {
            throw new IOException("blob " + key.blobName() + " has no known form");
        }
        try (InputStream opening = cipher(key, size == 1).newDecryptingStream(sealed, associated(key))) {
            return opening.readAllBytes();
        } catch (GeneralSecurityException e) {
            throw new IOException("blob " + key.blobName() + " cannot be opened", e);
        }
    }

    private static AesGcmHkdfStreaming cipher(MessageKey key, boolean large) throws GeneralSecurityException {
        return new AesGcmHkdfStreaming(key.key(), "HmacSha256", KEY, large ? SEGMENT : SMALL_SEGMENT, 0);
    }

    private static byte[] associated(MessageKey key) {
        return key.blobName().getBytes(StandardCharsets.US_ASCII);
    }
}
