package org.tidegate.casework;

import org.tidegate.examination.Inspector;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;

/** Looks into one message; used by several threads at once. */
@FunctionalInterface
public interface Inspection {

    Findings inspect(byte[] raw, DeliveryFacts facts);

    /** The program's own, under these rules. */
    static Inspection by(Rules rules) {
        return new Inspector(rules)::inspect;
    }
}
