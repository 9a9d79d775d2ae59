package org.tidegate.store;

import com.google.crypto.tink.subtle.AesGcmJce;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Optional;
import org.tidegate.vault.MasterKey;

/**
 * Seals what names a person under a key of its own submission or day. Whoever destroys the key has forgotten all that was
 * sealed under it, in every copy of the store that is made from then on.
 */
public final class CaseKeys {

    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int LENGTH = 32;

    private final Tx tx;
    private final MasterKey master;

    CaseKeys(Tx tx, MasterKey master) {
        this.tx = tx;
        this.master = master;
    }

    /** What is forgotten together. */
    public enum Scope {
        /** Assessments, suggested replies, requests: as long as the messages of a submission. */
        CASE,
        /** Readings and result letters of a submission. */
        RESULT,
        /** Mail among ourselves; the owner is the day, counted from 1970. */
        SERVICE
    }

    /** Destroys the key: nothing that was sealed under it can be opened any more. */
    public void destroy(Scope scope, long owner) {
        tx.update("DELETE FROM case_keys WHERE scope = ? AND owner = ?", scope.name(), owner);
    }

    byte[] seal(Scope scope, long owner, String place, String text) {
        byte[] key = key(scope, owner).orElseGet(() -> fresh(scope, owner));
        try {
            return new AesGcmJce(key).encrypt(text.getBytes(StandardCharsets.UTF_8), context(scope, owner, place));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("AES-256-GCM is missing on this platform", e);
        }
    }

    /**
     * Empty where the key has been destroyed.
     *
     * @throws UncheckedIOException where the bytes were changed or moved from another place
     */
    Optional<String> open(Scope scope, long owner, String place, byte[] sealed) {
        return key(scope, owner).map(key -> {
            try {
                return new String(
                        new AesGcmJce(key).decrypt(sealed, context(scope, owner, place)), StandardCharsets.UTF_8);
            } catch (GeneralSecurityException e) {
                throw new UncheckedIOException(new IOException("what was sealed as " + place + " was changed", e));
            }
        });
    }

    private Optional<byte[]> key(Scope scope, long owner) {
        return tx.first(
                        "SELECT wrapped FROM case_keys WHERE scope = ? AND owner = ?",
                        r -> r.bytes("wrapped"),
                        scope.name(),
                        owner)
                .map(wrapped -> unwrap(wrapped, purpose(scope, owner)));
    }

    private byte[] fresh(Scope scope, long owner) {
        byte[] key = new byte[LENGTH];
        RANDOM.nextBytes(key);
        tx.update(
                "INSERT INTO case_keys (scope, owner, wrapped) VALUES (?, ?, ?)",
                scope.name(),
                owner,
                master.wrap(key, purpose(scope, owner)));
        return key;
    }

    private byte[] unwrap(byte[] wrapped, String purpose) {
        try {
            return master.unwrap(wrapped, purpose);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String purpose(Scope scope, long owner) {
        return "case key " + scope + " " + owner;
    }

    private static byte[] context(Scope scope, long owner, String place) {
        return (scope + " " + owner + " " + place).getBytes(StandardCharsets.UTF_8);
    }
}
