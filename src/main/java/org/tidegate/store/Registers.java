package org.tidegate.store;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tidegate.work.Outage;
import org.tidegate.work.UserId;

/** The outages of our own mail, and the lots that must not be used. */
public final class Registers {

    private final Tx tx;

    Registers(Tx tx) {
        this.tx = tx;
    }

    public void add(Outage outage) {
        tx.update(
                "INSERT INTO outages (starts, ends, reason) VALUES (?, ?, ?)",
                outage.from(),
                outage.until(),
                outage.reason());
    }

    /** In the order of their starts. */
    public List<Outage> outages() {
        return tx.list(
                "SELECT starts, ends, reason FROM outages ORDER BY starts, ends",
                r -> new Outage(r.instant("starts"), r.instant("ends"), r.text("reason")));
    }

    public void quarantine(QuarantinedLot q) {
        tx.update(
                "INSERT INTO quarantined_lots (lot, since, reason, who) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING",
                q.lot(),
                q.since(),
                q.reason(),
                q.who().value());
    }

    public void lift(String lot) {
        tx.update("DELETE FROM quarantined_lots WHERE lot = ?", lot);
    }

    /** By lot. */
    public List<QuarantinedLot> quarantine() {
        return tx.list(
                "SELECT lot, since, reason, who FROM quarantined_lots ORDER BY lot",
                r -> new QuarantinedLot(
                        r.text("lot"),
                        r.instant("since"),
                        r.maybeText("reason").orElse(""),
                        new UserId(r.maybeText("who").orElse(UserId.DAEMON.value()))));
    }

    public Set<String> quarantinedLots() {
        return new TreeSet<>(tx.list("SELECT lot FROM quarantined_lots", r -> r.text("lot")));
    }
}
