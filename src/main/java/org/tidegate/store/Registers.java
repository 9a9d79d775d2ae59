package org.tidegate.store;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tidegate.work.Outage;

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

    public void quarantine(String lot, Instant since) {
        tx.update("INSERT INTO quarantined_lots (lot, since) VALUES (?, ?) ON CONFLICT DO NOTHING", lot, since);
    }

    public Set<String> quarantinedLots() {
        return new TreeSet<>(tx.list("SELECT lot FROM quarantined_lots", r -> r.text("lot")));
    }
}
