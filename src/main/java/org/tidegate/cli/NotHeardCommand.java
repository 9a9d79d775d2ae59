package org.tidegate.cli;

import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import org.tidegate.casework.Desk;
import org.tidegate.casework.SilentTest;
import org.tidegate.report.NotHeardCsv;
import org.tidegate.report.NotHeardText;
import org.tidegate.rules.Rules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code not-heard-from}: tests whose window is open or over, and of which nothing came. */
@Command(
        name = "not-heard-from",
        mixinStandardHelpOptions = true,
        description =
                "Lists the tests whose window is open, or was over within the last 24 hours, and of which nothing came, with what"
                        + " can still be done. Names nobody; tests stand by their reference. Reminders are sent from the console.",
        footer = {"", "Example:", "  tidegate not-heard-from", "  tidegate not-heard-from --csv"})
final class NotHeardCommand implements Callable<Integer> {

    @Mixin
    private AtOption at = new AtOption();

    @Option(names = "--csv", description = "Comma-separated values (RFC 4180) instead of text.")
    private boolean csv;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private StoreOption storeOption = new StoreOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        Rules rules = rulesOption.load();
        Clock clock = at.clock(rules.timing().zone());
        try (Desk desk = storeOption.open(rules, clock)) {
            List<SilentTest> silent = desk.notHeardFrom().list();
            String written = csv
                    ? new NotHeardCsv(rules).write(silent)
                    : new NotHeardText(rules).write(silent, desk.notHeardFrom().notExamined(), clock.instant());
            spec.commandLine().getOut().print(written);
            spec.commandLine().getOut().flush();
        }
        return 0;
    }
}
