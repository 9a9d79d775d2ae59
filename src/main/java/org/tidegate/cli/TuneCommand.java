package org.tidegate.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.tidegate.casework.Desk;
import org.tidegate.examination.Assessor;
import org.tidegate.examination.linkage.Nicknames;
import org.tidegate.examination.linkage.Statement;
import org.tidegate.examination.linkage.TestIndex;
import org.tidegate.examination.linkage.TunedLevel;
import org.tidegate.examination.linkage.WeightTuning;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code tune}: matching weights as the stored history suggests them, beside the live ones; never changes a rule. */
@Command(
        name = "tune",
        mixinStandardHelpOptions = true,
        description = {
            "Re-estimates the matching weights m and u from the stored messages by expectation-maximisation.",
            "Writes a candidate file for a person to read, and tells what would change; the live rules stay as they are."
        },
        footer = {"", "Example:", "  tidegate tune --out candidate-matching.yaml"})
final class TuneCommand implements Callable<Integer> {

    private static final int PAGE = 500;

    /** Smaller changes of a weight are not worth a person's minutes. */
    private static final double WORTH_TELLING = 0.5;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Where to write the candidate. Default: ${DEFAULT-VALUE}.",
            defaultValue = "candidate-matching.yaml")
    private Path out = Path.of("candidate-matching.yaml");

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private StoreOption storeOption = new StoreOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        Rules rules = rulesOption.load();
        try (Desk desk = storeOption.open(rules)) {
            List<Statement> history = desk.store().read(tx -> statements(tx, desk, new Assessor(rules)));
            TestIndex tests =
                    desk.store().read(tx -> TestIndex.of(tx.tests().book().tests()));
            List<TunedLevel> tuned =
                    WeightTuning.tune(rules.matching(), rules.timing().zone(), Nicknames.standard(), history, tests);
            if (tuned.isEmpty()) {
                throw new Refusal("no stored message has a name or time and a test to compare it with;"
                        + " take messages in and import the appointments first.");
            }
            Files.writeString(out, CandidateWeights.yaml(rules.matching(), tuned, history.size()));
            tell(tuned, history.size());
            return 0;
        }
    }

    private static List<Statement> statements(Tx tx, Desk desk, Assessor assessor) {
        List<Statement> all = new ArrayList<>();
        long last = 0;
        for (List<StoredMessage> page = tx.messages().after(last, PAGE);
                !page.isEmpty();
                page = tx.messages().after(last, PAGE)) {
            page.stream()
                    .flatMap(m -> desk.vault().findings(m).stream())
                    .filter(TuneCommand::saysSomething)
                    .map(f -> assessor.statement(f, f.readings()))
                    .forEach(all::add);
            last = page.get(page.size() - 1).id().value();
        }
        return all;
    }

    private static boolean saysSomething(Findings message) {
        return message.readings().stream()
                .limit(1)
                .anyMatch(r -> r.name().isPresent() || r.testTime().isPresent());
    }

    private void tell(List<TunedLevel> tuned, int messages) {
        PrintWriter to = spec.commandLine().getOut();
        to.println(messages + " messages compared; weights that would change by half a bit or more:");
        tuned.stream()
                .filter(t -> Math.abs(t.change()) >= WORTH_TELLING)
                .forEach(t -> to.println("  " + CandidateWeights.words(t)));
        to.printf(
                Locale.ROOT,
                "The candidate is in %s; the live rules are unchanged. To try it, put it as matching.yaml into a copy of the rules"
                        + " and check that copy with check-rules.%n",
                out);
    }
}
