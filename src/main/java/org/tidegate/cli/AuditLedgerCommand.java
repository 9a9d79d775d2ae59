package org.tidegate.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.tidegate.casework.Desk;
import org.tidegate.ledger.audit.AuditResult;
import org.tidegate.ledger.audit.LedgerAudit;
import org.tidegate.ledger.audit.StoredHead;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code audit-ledger}: re-checks the whole ledger from its stored bytes. */
@Command(
        name = "audit-ledger",
        mixinStandardHelpOptions = true,
        description = "Re-checks the whole ledger from its stored bytes: every leaf, every root, every signature.",
        footer = {"", "Example:", "  tidegate audit-ledger"})
final class AuditLedgerCommand implements Callable<Integer> {

    private static final int PAGE = 10_000;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private StoreOption storeOption = new StoreOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        try (Desk desk = storeOption.open(rulesOption.load())) {
            AuditResult result = desk.store().read(tx -> {
                List<byte[]> leaves = new ArrayList<>();
                for (List<byte[]> page = tx.ledger().leaves(0, PAGE);
                        !page.isEmpty();
                        page = tx.ledger().leaves(leaves.size(), PAGE)) {
                    leaves.addAll(page);
                }
                List<StoredHead> heads = tx.ledger().heads().stream()
                        .map(h -> new StoredHead(
                                h.size(), h.root().hex(), h.time().toString(), h.keyId(), h.signature()))
                        .toList();
                return LedgerAudit.check(leaves, heads, desk.store().publicKey());
            });
            spec.commandLine()
                    .getOut()
                    .println("Leaves " + result.leaves() + ", signed heads " + result.heads() + ", root "
                            + result.root());
            result.faults().forEach(f -> spec.commandLine().getErr().println(f));
            spec.commandLine().getOut().println(result.whole() ? "The ledger is whole." : "The ledger is NOT whole.");
            return result.whole() ? 0 : 2;
        }
    }
}
