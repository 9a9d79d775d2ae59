package org.tidegate.rules;

import java.util.List;

/** What came of reading a rules folder: a whole valid set, or every fault at once. */
public sealed interface RulesResult {

    record Loaded(Rules rules) implements RulesResult {}

    /** @param faults never empty, by file and line */
    record Faulty(List<RuleFault> faults) implements RulesResult {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
