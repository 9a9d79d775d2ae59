package org.tidegate.casework;

import org.jspecify.annotations.Nullable;
import org.tidegate.examination.Inspected;
import org.tidegate.examination.Inspector;
import org.tidegate.examination.picture.OutsideDecoder;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.rules.Rules;

/** Looks into one message; used by several threads at once. */
@FunctionalInterface
public interface Inspection {

    Inspected inspect(byte[] raw, DeliveryFacts facts);

    /** The program's own, under these rules; made at the first message, so that taking mail in never waits for it. */
    static Inspection by(Rules rules) {
        return by(rules, OutsideDecoder.NONE);
    }

    /** With a picture decoder that is installed here. */
    static Inspection by(Rules rules, OutsideDecoder outside) {
        return new Inspection() {
            private @Nullable Inspector made;

            private synchronized Inspector inspector() {
                Inspector inspector = made == null ? new Inspector(rules, outside) : made;
                made = inspector;
                return inspector;
            }

            @Override
            public Inspected inspect(byte[] raw, DeliveryFacts facts) {
                return inspector().look(raw, facts);
            }
        };
    }
}
