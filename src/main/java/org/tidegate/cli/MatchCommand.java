package org.tidegate.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tidegate.booking.TestKey;
import org.tidegate.examination.linkage.Candidate;
import org.tidegate.examination.linkage.LinkageResult;
import org.tidegate.examination.linkage.Linker;
import org.tidegate.examination.linkage.Nicknames;
import org.tidegate.examination.linkage.Statement;
import org.tidegate.examination.linkage.TestIndex;
import org.tidegate.examination.subject.StatedText;
import org.tidegate.examination.subject.SubjectReader;
import org.tidegate.rules.Rules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code match}: subject lines in, the booked test out. */
@Command(
        name = "match",
        mixinStandardHelpOptions = true,
        description = {
            "Finds the booked test that a subject line belongs to: JSON Lines in on standard input, JSON Lines out.",
            "In: {\"id\",\"subject\",\"from\",\"received\"}.",
            "Out: {\"id\",\"outcome\":\"match|ambiguous|none\",\"ref\",\"probability\",\"candidates\":[…]}."
        },
        footer = {"", "Example:", "  tidegate match --appointments appointments.csv < subjects.jsonl"})
final class MatchCommand implements Callable<Integer> {

    private static final int MOST_CANDIDATES = 5;

    @Option(
            names = "--appointments",
            required = true,
            paramLabel = "FILE",
            description = "The appointment book (CSV, JSON or iCalendar).")
    private Path appointments = Path.of("");

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** One answer; weights are log2 likelihood ratios. */
    record Answer(String id, String outcome, Optional<String> ref, double probability, List<Fit> candidates) {}

    /** One candidate with its explanation. */
    record Fit(String ref, int attempt, double probability, double prior, double total, List<String> weights) {}

    @Override
    public Integer call() {
        Rules rules = rulesOption.load();
        SubjectReader reader = new SubjectReader(rules);
        Linker linker = new Linker(rules.matching(), rules.timing().zone(), Nicknames.standard());
        TestIndex index = TestIndex.of(Books.read(appointments).tests());
        return SubjectLines.answer(spec.commandLine(), (id, text) -> answer(id, link(text, reader, linker, index)));
    }

    private static LinkageResult link(StatedText text, SubjectReader reader, Linker linker, TestIndex index) {
        Statement statement =
                new Statement(reader.read(text), text.fromDisplayName(), text.fromAddress(), text.received());
        return linker.link(statement, index);
    }

    private static Answer answer(String id, LinkageResult result) {
        return new Answer(
                id,
                result.outcome().name().toLowerCase(Locale.ROOT),
                result.test().map(TestKey::ref),
                rounded(result.probability()),
                result.candidates().stream()
                        .limit(MOST_CANDIDATES)
                        .map(MatchCommand::fit)
                        .toList());
    }

    private static Fit fit(Candidate c) {
        List<String> weights = c.weights().stream()
                .map(w -> w.field() + " " + w.level() + " " + rounded(w.weight()))
                .toList();
        return new Fit(
                c.test().ref(),
                c.test().attempt(),
                rounded(c.probability()),
                rounded(c.priorWeight()),
                rounded(c.total()),
                weights);
    }

    private static double rounded(double value) {
        return Math.round(value * 1e4) / 1e4;
    }
}
