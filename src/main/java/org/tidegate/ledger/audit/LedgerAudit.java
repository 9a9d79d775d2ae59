package org.tidegate.ledger.audit;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.MessageDigest;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads every leaf in order, builds the tree anew and holds each signed head against it. */
public final class LedgerAudit {

    private static final JsonMapper JSON = new JsonMapper();

    private final SortedMap<Long, List<StoredHead>> pending = new TreeMap<>();
    private final List<String> faults = new ArrayList<>();
    /** Subtree roots by height; empty where no complete subtree of that height stands open. */
    private final List<byte[]> open = new ArrayList<>();

    private final MessageDigest sha;
    private final PublicKey key;
    private long leaves;
    private long heads;

    private LedgerAudit(List<StoredHead> heads, String publicKey) throws GeneralSecurityException {
        heads.forEach(
                h -> pending.computeIfAbsent(h.size(), s -> new ArrayList<>()).add(h));
        sha = MessageDigest.getInstance("SHA-256");
        key = KeyFactory.getInstance("Ed25519")
                .generatePublic(new X509EncodedKeySpec(Base64.getDecoder().decode(publicKey)));
    }

    /**
     * @param stored the bytes of all leaves in order
     * @param heads all signed heads, in any order
     * @param publicKey base64 of the X.509 form
     */
    public static AuditResult check(Iterable<byte[]> stored, List<StoredHead> heads, String publicKey) {
        try {
            LedgerAudit audit = new LedgerAudit(heads, publicKey);
            audit.holdHeads();
            for (byte[] leaf : stored) {
                audit.take(leaf);
            }
            return audit.result();
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return new AuditResult(0, 0, "", List.of("The public key cannot be used: " + e.getMessage()));
        }
    }

    private void take(byte[] leaf) {
        checkSequence(leaf);
        byte[] carried = digest(new byte[] {0}, leaf);
        int height = 0;
        while (height < open.size() && open.get(height).length > 0) {
            carried = digest(new byte[] {1}, open.get(height), carried);
            open.set(height++, new byte[0]);
        }
        if (height == open.size()) {
            open.add(carried);
        } else {
            open.set(height, carried);
        }
        leaves++;
        holdHeads();
    }

    private void checkSequence(byte[] leaf) {
        try {
            JsonNode json = JSON.readTree(leaf);
            if (!json.isObject() || json.path("seq").asLong(-1) != leaves) {
                faults.add("Leaf " + leaves + " bears the sequence number " + json.path("seq"));
            }
        } catch (JacksonException e) {
            faults.add("Leaf " + leaves + " is not JSON");
        }
    }

    private void holdHeads() {
        List<StoredHead> due = pending.remove(leaves);
        if (due == null) {
            return;
        }
        String root = root();
        for (StoredHead head : due) {
            heads++;
            if (!head.root().equals(root)) {
                faults.add("The head of size " + head.size() + " states another root than its leaves give");
            }
            if (!signed(head)) {
                faults.add("The head of size " + head.size() + " is not signed by the given key");
            }
        }
    }

    private boolean signed(StoredHead head) {
        String text = "{\"key\":\"" + head.keyId() + "\",\"root\":\"" + head.root() + "\",\"size\":" + head.size()
                + ",\"time\":\"" + head.time() + "\",\"v\":1}";
        try {
            Signature signature = Signature.getInstance("Ed25519");
            signature.initVerify(key);
            signature.update(text.getBytes(StandardCharsets.UTF_8));
            return signature.verify(Base64.getDecoder().decode(head.signature()));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return false;
        }
    }

    private String root() {
        byte[] root = null;
        for (byte[] peak : open) {
            if (peak.length > 0) {
                root = root == null ? peak : digest(new byte[] {1}, peak, root);
            }
        }
        return HexFormat.of().formatHex(root == null ? digest() : root);
    }

    private byte[] digest(byte[]... parts) {
        for (byte[] part : parts) {
            sha.update(part);
        }
        return sha.digest();
    }

    private AuditResult result() {
        pending.keySet()
                .forEach(size ->
                        faults.add("A head of size " + size + " was signed, but only " + leaves + " leaves are there"));
        return new AuditResult(leaves, heads, root(), List.copyOf(faults));
    }
}
