package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.tidegate.ledger.audit.LedgerAudit;
import org.tidegate.ledger.audit.StoredHead;
import org.tidegate.store.Store;
import org.tidegate.store.StoredMessage;

/** What has to hold after whatever happened. */
public final class Kept {

    private Kept() {}

    /** Each message once, byte for byte; nothing else; one ledger that verifies. */
    public static void whole(Desk desk, List<byte[]> expected) {
        assertThat(messages(desk).stream()
                        .map(m -> Arrays.toString(desk.vault().raw(m).orElseThrow()))
                        .toList())
                .containsExactlyInAnyOrderElementsOf(
                        expected.stream().map(Arrays::toString).toList());
        ledger(desk.store());
    }

    public static List<StoredMessage> messages(Desk desk) {
        return desk.store().read(tx -> tx.messages().after(0, 100_000));
    }

    public static void examined(Desk desk) {
        assertThat(desk.store().<Long>read(tx -> tx.work().waiting())).isZero();
        assertThat(messages(desk)).allSatisfy(m -> assertThat(m.inspected()).isPresent());
    }

    static void ledger(Store store) {
        List<StoredHead> heads = store.read(tx -> tx.ledger().heads()).stream()
                .map(h -> new StoredHead(h.size(), h.root().hex(), h.time().toString(), h.keyId(), h.signature()))
                .toList();
        List<byte[]> leaves = store.read(tx -> tx.ledger().leaves(0, 1_000_000));
        assertThat(LedgerAudit.check(leaves, heads, store.publicKey()).faults()).isEmpty();
    }
}
