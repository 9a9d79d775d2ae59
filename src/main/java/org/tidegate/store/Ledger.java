package org.tidegate.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tidegate.ledger.Frontier;
import org.tidegate.ledger.Hash;
import org.tidegate.ledger.HeadSigner;
import org.tidegate.ledger.LeafFormat;
import org.tidegate.ledger.LedgerEvent;
import org.tidegate.ledger.SignedHead;

/** The ledger's rows. Appending happens at the end of each writing transaction; here it can be read. */
public final class Ledger {

    private final Tx tx;

    Ledger(Tx tx) {
        this.tx = tx;
    }

    public long size() {
        return frontier("").size();
    }

    /** The bytes of leaves from {@code from} on, in order. */
    public List<byte[]> leaves(long from, int most) {
        return tx.list(
                "SELECT leaf FROM ledger_leaves WHERE sequence >= ? ORDER BY sequence LIMIT ?",
                r -> r.bytes("leaf"),
                from,
                most);
    }

    public List<SignedHead> heads() {
        return tx.list(
                "SELECT size, root, signed, key_id, signature FROM ledger_heads ORDER BY size", Ledger::readHead);
    }

    public Optional<SignedHead> newestHead() {
        return tx.first(
                "SELECT size, root, signed, key_id, signature FROM ledger_heads ORDER BY size DESC LIMIT 1",
                Ledger::readHead);
    }

    /** Locks the head, appends what the transaction recorded, signs: its last statements. */
    void close(HeadSigner signer, Instant now) {
        if (tx.events().isEmpty()) {
            return;
        }
        Frontier frontier = frontier(tx.dialect().forUpdate());
        for (Tx.Event e : tx.events()) {
            byte[] leaf = LeafFormat.encode(new LedgerEvent(
                    frontier.size(), now, e.kind(), e.who().value(), e.codes(), new TreeMap<>(e.references())));
            tx.update("INSERT INTO ledger_leaves (sequence, leaf) VALUES (?, ?)", frontier.size(), leaf);
            frontier = frontier.append(Hash.leaf(leaf));
        }
        save(frontier, signer.sign(frontier.size(), frontier.root(), now));
    }

    private void save(Frontier frontier, SignedHead head) {
        tx.update(
                "UPDATE ledger_frontier SET size = ?, peaks = ? WHERE id = 1",
                frontier.size(),
                frontier.peaks().stream().map(Hash::hex).collect(Collectors.joining(",")));
        tx.update(
                "INSERT INTO ledger_heads (size, root, signed, key_id, signature) VALUES (?, ?, ?, ?, ?)",
                head.size(),
                head.root().hex(),
                head.time().toString(),
                head.keyId(),
                head.signature());
    }

    private Frontier frontier(String lock) {
        return tx.first("SELECT size, peaks FROM ledger_frontier WHERE id = 1" + lock, Ledger::readFrontier)
                .orElseThrow(() -> new IllegalStateException("the ledger has no frontier"));
    }

    private static Frontier readFrontier(Row r) throws SQLException {
        return new Frontier(
                r.number("size"),
                Arrays.stream(r.text("peaks").split(","))
                        .filter(p -> !p.isEmpty())
                        .map(Hash::new)
                        .toList());
    }

    private static SignedHead readHead(Row r) throws SQLException {
        return new SignedHead(
                r.number("size"),
                new Hash(r.text("root")),
                Instant.parse(r.text("signed")),
                r.text("key_id"),
                r.text("signature"));
    }
}
