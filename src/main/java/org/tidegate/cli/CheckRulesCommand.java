package org.tidegate.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tidegate.rules.RuleFault;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code check-rules}: every fault of a rules folder at once. */
@Command(
        name = "check-rules",
        mixinStandardHelpOptions = true,
        description = "Reads a rules folder and reports every fault with file, line and hint.",
        footer = {"", "Example:", "  tidegate check-rules rules"})
final class CheckRulesCommand implements Callable<Integer> {

    @Parameters(paramLabel = "DIR", description = "The rules folder.")
    private Path dir = Path.of("");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        RulesResult result = RulesReader.read(dir);
        if (result instanceof RulesResult.Faulty faulty) {
            for (RuleFault fault : faulty.faults()) {
                spec.commandLine().getErr().println(fault);
            }
            return 2;
        }
        Rules rules = ((RulesResult.Loaded) result).rules();
        spec.commandLine()
                .getOut()
                .println("The rules are whole: " + rules.checks().size() + " checks, "
                        + rules.clinics().size() + " clinics, "
                        + rules.protocols().size() + " kits. Hash " + rules.hash());
        return 0;
    }
}
