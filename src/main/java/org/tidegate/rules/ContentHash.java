package org.tidegate.rules;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 over names, lengths and contents of files, so that no two sets of files look alike. */
final class ContentHash {

    private final MessageDigest digest;

    ContentHash() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    void add(String name, byte[] content) {
        byte[] utf8 = name.getBytes(StandardCharsets.UTF_8);
        digest.update(ByteBuffer.allocate(2 * Integer.BYTES)
                .putInt(utf8.length)
                .putInt(content.length)
                .flip());
        digest.update(utf8);
        digest.update(content);
    }

    String hex() {
        return HexFormat.of().formatHex(digest.digest());
    }
}
