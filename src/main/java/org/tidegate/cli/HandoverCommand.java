package org.tidegate.cli;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidegate.casework.Desk;
import org.tidegate.report.Handover;
import org.tidegate.report.HandoverCsv;
import org.tidegate.report.HandoverText;
import org.tidegate.report.Handovers;
import org.tidegate.rules.Rules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code handover}: what a shift that begins has to know. */
@Command(
        name = "handover",
        mixinStandardHelpOptions = true,
        description =
                "Tells what happened while nobody was there: what went out by itself and why, what is held and how much time is"
                        + " left, what can no longer be saved. Names nobody; submissions stand by number and reference."
                        + " watch sends it by itself when a shift begins (rules/hours.yaml).",
        footer = {
            "",
            "Example:",
            "  tidegate handover",
            "  tidegate handover --from 2026-05-03T19:00 --to 2026-05-04T07:00 --csv"
        })
final class HandoverCommand implements Callable<Integer> {

    @Option(
            names = "--from",
            paramLabel = "TIME",
            description = "RFC 3339, or a wall time of the clinic. Default: when the last shift ended.")
    private @Nullable String from;

    @Option(
            names = "--to",
            paramLabel = "TIME",
            description = "Likewise; what is open is told as it stands now, its time left from here. Default: now.")
    private @Nullable String to;

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
        ZoneId zone = rules.timing().zone();
        Instant until = Optional.ofNullable(to).map(t -> GivenTime.of(t, zone)).orElseGet(Instant::now);
        Optional<Instant> since = Optional.ofNullable(from).map(t -> GivenTime.of(t, zone));
        if (since.filter(t -> !t.isBefore(until)).isPresent()) {
            throw new Refusal("--from is not before --to: nothing lies between them.");
        }
        try (Desk desk = storeOption.open(rules)) {
            Handovers handovers = new Handovers(desk.store(), desk.casebook(), rules);
            Handover handover = since.map(t -> handovers.of(t, until)).orElseGet(() -> handovers.lastNight(until));
            spec.commandLine().getOut().print(written(handover, rules));
            spec.commandLine().getOut().flush();
        }
        return 0;
    }

    private String written(Handover handover, Rules rules) {
        return csv ? new HandoverCsv(rules).write(handover) : new HandoverText(rules).write(handover);
    }
}
