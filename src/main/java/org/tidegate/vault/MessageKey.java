package org.tidegate.vault;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;

/**
 * What one message is kept under. Whoever destroys key and salt has forgotten the message.
 *
 * @param key 32 random bytes
 * @param salt 32 random bytes, hashed before the message so that its hash tells nothing once the salt is gone
 * @param blobName 32 hexadecimal digits that tell nothing of the content
 */
public record MessageKey(byte[] key, byte[] salt, String blobName) {

    public static MessageKey random(SecureRandom random) {
        byte[] name = bytes(random, 16);
        return new MessageKey(
                bytes(random, 32), bytes(random, 32), HexFormat.of().formatHex(name));
    }

    /** SHA-256(salt ‖ message), hexadecimal: what the ledger holds of a message. */
    public String saltedHash(byte[] message) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(salt);
            return HexFormat.of().formatHex(digest.digest(message));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static byte[] bytes(SecureRandom random, int length) {
        byte[] bytes = new byte[length];
        random.nextBytes(bytes);
        return bytes;
    }
}
