package org.tidegate.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tidegate.ledger.audit.AuditResult;
import org.tidegate.ledger.audit.LedgerAudit;
import org.tidegate.ledger.audit.StoredHead;

/** The audit room agrees with a sound ledger and names each way of tampering with one. */
class LedgerAuditTest {

    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

    private final HeadSigner signer = HeadSigner.generate();
    private final List<byte[]> leaves = new ArrayList<>();
    private final List<StoredHead> heads = new ArrayList<>();

    LedgerAuditTest() {
        Frontier frontier = Frontier.EMPTY;
        for (int i = 0; i < 21; i++) {
            byte[] leaf = LeafFormat.encode(new LedgerEvent(i, NOON, "note", "daemon", List.of(), new TreeMap<>()));
            leaves.add(leaf);
            frontier = frontier.append(Hash.leaf(leaf));
            SignedHead head = signer.sign(frontier.size(), frontier.root(), NOON.plusMillis(i));
            assertThat(HeadSigner.verifies(head, signer.publicKey())).isTrue();
            heads.add(stored(head));
        }
    }

    @Test
    void aSoundLedgerPasses() {
        AuditResult result = LedgerAudit.check(leaves, heads, signer.publicKey());
        assertThat(result.faults()).isEmpty();
        assertThat(result.heads()).isEqualTo(21);
        assertThat(result.root()).isEqualTo(heads.get(20).root());
    }

    @Test
    void aChangedLeafIsFound() {
        leaves.set(
                5,
                new String(leaves.get(5), StandardCharsets.UTF_8)
                        .replace("note", "nope")
                        .getBytes(StandardCharsets.UTF_8));
        assertThat(LedgerAudit.check(leaves, heads, signer.publicKey()).faults())
                .hasSize(16)
                .first()
                .asString()
                .contains("size 6 states another root");
    }

    @Test
    void aLostTailIsFound() {
        leaves.remove(20);
        assertThat(LedgerAudit.check(leaves, heads, signer.publicKey()).faults())
                .singleElement()
                .asString()
                .contains("size 21 was signed, but only 20 leaves");
    }

    @Test
    void anotherKeyIsFound() {
        assertThat(LedgerAudit.check(leaves, heads, HeadSigner.generate().publicKey())
                        .faults())
                .hasSize(21)
                .allSatisfy(f -> assertThat(f).contains("not signed by the given key"));
    }

    @Test
    void theKeyPairSurvivesItsWrittenForm() {
        HeadSigner again = HeadSigner.of(signer.encoded());
        assertThat(again.keyId()).isEqualTo(signer.keyId());
        assertThat(HeadSigner.verifies(again.sign(0, Hash.EMPTY, NOON), signer.publicKey()))
                .isTrue();
    }

    static StoredHead stored(SignedHead head) {
        return new StoredHead(head.size(), head.root().hex(), head.time().toString(), head.keyId(), head.signature());
    }
}
