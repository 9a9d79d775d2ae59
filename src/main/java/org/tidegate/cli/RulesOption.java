package org.tidegate.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.tidegate.rules.RuleFault;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;
import picocli.CommandLine.Option;

/** {@code --rules DIR}, shared by every command that needs rules. */
final class RulesOption {

    @Option(names = "--rules", paramLabel = "DIR", description = "Rule files; default: those inside the program.")
    private @Nullable Path dir;

    Rules load() {
        RulesResult result = dir == null ? RulesReader.bundled() : RulesReader.read(dir);
        if (result instanceof RulesResult.Faulty faulty) {
            throw new Refusal(faults(faulty));
        }
        return ((RulesResult.Loaded) result).rules();
    }

    private static String faults(RulesResult.Faulty faulty) {
        StringBuilder words =
                new StringBuilder("the rules have " + faulty.faults().size() + " fault(s); nothing was done:");
        for (RuleFault fault : faulty.faults()) {
            words.append(System.lineSeparator()).append("  ").append(fault);
        }
        return words.toString();
    }
}
