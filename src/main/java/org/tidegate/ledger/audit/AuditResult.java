package org.tidegate.ledger.audit;

import java.util.List;

/**
 * What the audit found.
 *
 * @param leaves how many leaves were read
 * @param heads how many heads were checked
 * @param root the root over all leaves, hexadecimal
 * @param faults each in one sentence; empty when the ledger is whole
 */
public record AuditResult(long leaves, long heads, String root, List<String> faults) {

    public boolean whole() {
        return faults.isEmpty();
    }
}
