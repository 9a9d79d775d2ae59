package org.tidegate.ledger;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A SHA-256 value of the tree (RFC 6962 §2.1). The hexadecimal form is lower case. */
public record Hash(String hex) {

    private static final HexFormat HEX = HexFormat.of();

    /** The hash of the empty tree. */
    public static final Hash EMPTY = of();

    public Hash {
        if (hex.length() != 64) {
            throw new IllegalArgumentException("a SHA-256 value has 64 hexadecimal digits, not " + hex.length());
        }
    }

    public static Hash leaf(byte[] data) {
        return of(new byte[] {0}, data);
    }

    public static Hash node(Hash left, Hash right) {
        return of(new byte[] {1}, left.bytes(), right.bytes());
    }

    public byte[] bytes() {
        return HEX.parseHex(hex);
    }

    private static Hash of(byte[]... parts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                digest.update(part);
            }
            return new Hash(HEX.formatHex(digest.digest()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
