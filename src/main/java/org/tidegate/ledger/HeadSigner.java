package org.tidegate.ledger;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;

/** Signs heads with Ed25519 and checks them. */
public final class HeadSigner {

    private final PrivateKey privateKey;
    private final PublicKey publicKey;

    private HeadSigner(PrivateKey privateKey, PublicKey publicKey) {
        this.privateKey = privateKey;
        this.publicKey = publicKey;
    }

    public static HeadSigner generate() {
        try {
            KeyPair pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
            return new HeadSigner(pair.getPrivate(), pair.getPublic());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Java 15 and newer sign with Ed25519", e);
        }
    }

    /** @param encoded the two keys as {@link #encoded} wrote them */
    public static HeadSigner of(String encoded) {
        String[] halves = encoded.strip().split("\\.", -1);
        if (halves.length != 2) {
            throw new IllegalArgumentException("the ledger key must hold two parts");
        }
        try {
            KeyFactory factory = KeyFactory.getInstance("Ed25519");
            return new HeadSigner(
                    factory.generatePrivate(
                            new PKCS8EncodedKeySpec(Base64.getDecoder().decode(halves[0]))),
                    publicKey(halves[1]));
        } catch (GeneralSecurityException e) {
            throw new IllegalArgumentException("the ledger key is not an Ed25519 key pair", e);
        }
    }

    /** Private then public key, base64 of PKCS #8 and X.509, joined by a dot: to be kept wrapped. */
    public String encoded() {
        return Base64.getEncoder().encodeToString(privateKey.getEncoded()) + "." + publicKey();
    }

    /** The public key, base64 of its X.509 form: what an auditor needs. */
    public String publicKey() {
        return Base64.getEncoder().encodeToString(publicKey.getEncoded());
    }

    public String keyId() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(publicKey.getEncoded());
            return HexFormat.of().formatHex(digest, 0, 8);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    public SignedHead sign(long size, Hash root, Instant time) {
        try {
            Signature signature = Signature.getInstance("Ed25519");
            signature.initSign(privateKey);
            signature.update(SignedHead.signedBytes(size, root, time, keyId()));
            return new SignedHead(size, root, time, keyId(), Base64.getEncoder().encodeToString(signature.sign()));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("the head could not be signed", e);
        }
    }

    /** Whether the holder of the public key signed this head. */
    public static boolean verifies(SignedHead head, String publicKey) {
        try {
            Signature signature = Signature.getInstance("Ed25519");
            signature.initVerify(publicKey(publicKey));
            signature.update(head.signedBytes());
            return signature.verify(Base64.getDecoder().decode(head.signature()));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return false;
        }
    }

    private static PublicKey publicKey(String base64) throws GeneralSecurityException {
        return KeyFactory.getInstance("Ed25519")
                .generatePublic(new X509EncodedKeySpec(Base64.getDecoder().decode(base64)));
    }
}
