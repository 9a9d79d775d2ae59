package org.tidegate.rules;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

/** The rules in force. A reload that finds faults changes nothing but the list of faults. Safe for use by several threads. */
public final class RulesHolder {

    private record State(Rules rules, List<RuleFault> faults) {}

    private final AtomicReference<State> state;

    public RulesHolder(Rules first) {
        state = new AtomicReference<>(new State(first, List.of()));
    }

    /** The last rules that were valid. */
    public Rules current() {
        return state.get().rules();
    }

    /** What was wrong with the last reload; empty where it was taken. */
    public List<RuleFault> faults() {
        return state.get().faults();
    }

    /** Reads the folder and takes its rules where they are valid; tells what came of it. */
    public RulesResult reload(Path folder) {
        RulesResult result = Rules.load(folder);
        if (result instanceof RulesResult.Loaded loaded) {
            state.set(new State(loaded.rules(), List.of()));
        } else if (result instanceof RulesResult.Faulty faulty) {
            state.updateAndGet(s -> new State(s.rules(), faulty.faults()));
        }
        return result;
    }
}
