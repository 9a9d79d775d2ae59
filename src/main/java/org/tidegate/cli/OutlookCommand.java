package org.tidegate.cli;

import java.time.Clock;
import java.util.concurrent.Callable;
import org.tidegate.casework.Desk;
import org.tidegate.report.Horizon;
import org.tidegate.report.Outlook;
import org.tidegate.report.OutlookText;
import org.tidegate.rules.Rules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code outlook}: how the next hours will go. */
@Command(
        name = "outlook",
        mixinStandardHelpOptions = true,
        description =
                "Reckons from the arrivals and handling times of the last weeks when the queue will be clear, how many promises will"
                        + " break, and how many more people would keep them. Advice, no promise. New times are told from the console.",
        footer = {"", "Example:", "  tidegate outlook --people 2", "  tidegate outlook --people 3 --json"})
final class OutlookCommand implements Callable<Integer> {

    @Option(
            names = "--people",
            paramLabel = "N",
            description = "How many work the queue. Default: ${DEFAULT-VALUE}.",
            defaultValue = "1")
    private int people = 1;

    @Mixin
    private AtOption at = new AtOption();

    @Option(names = "--json", description = "One JSON object instead of text; times as RFC 3339 in UTC.")
    private boolean json;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private StoreOption storeOption = new StoreOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        if (people < 0) {
            throw new Refusal("--people " + people + ": nobody is the least.");
        }
        Rules rules = rulesOption.load();
        Clock clock = at.clock(rules.timing().zone());
        try (Desk desk = storeOption.open(rules, clock)) {
            Horizon horizon = new Outlook(desk.store(), desk.casebook(), rules, clock).with(people);
            spec.commandLine().getOut().print(json ? Json.text(horizon) + "\n" : new OutlookText(rules).write(horizon));
            spec.commandLine().getOut().flush();
        }
        return 0;
    }
}
