package org.tidegate.rules;

import java.nio.file.Path;
import java.util.List;

/** The rules in force. A reload that finds faults changes nothing but the list of faults. Safe for use by several threads. */
public final class RulesHolder {

    private record State(Rules rules, List<RuleFault> faults) {}

    private volatile State state;

    public RulesHolder(Rules first) {
        state = new State(first, List.of());
    }

    /** The last rules that were valid. */
    public Rules current() {
        return state.rules();
    }

    /** What was wrong with the last reload; empty where it was taken. */
    public List<RuleFault> faults() {
        return state.faults();
    }

    /** Reads the folder and takes its rules where they are valid; tells what came of it. */
    public synchronized RulesResult reload(Path folder) {
        RulesResult result = Rules.load(folder);
        if (result instanceof RulesResult.Loaded loaded) {
            state = new State(loaded.rules(), List.of());
        } else if (result instanceof RulesResult.Faulty faulty) {
            state = new State(state.rules(), faulty.faults());
        }
        return result;
    }
}
