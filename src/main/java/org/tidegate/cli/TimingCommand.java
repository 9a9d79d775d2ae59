package org.tidegate.cli;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tidegate.examination.timing.GivenNetwork;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.WindowVerdict;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import tools.jackson.databind.JsonNode;

/** {@code timing}: clues and windows in, verdicts with derivations out. */
@Command(
        name = "timing",
        mixinStandardHelpOptions = true,
        description = {
            "Judges windows on given clues: JSON Lines in on standard input, JSON Lines out.",
            "In: {\"id\",\"zone\",\"clues\":[…],\"windows\":[…]} (shared/schemas/timing-question.schema.json).",
            "Out: {\"id\",\"verdicts\":[{\"check\",\"verdict\",\"level\",\"assumptions\",\"margin\",\"derivation\"}],\"set_aside\"}.",
            "Events: epoch, test, photo[0], sent, hop[0], arrived, device_zero. A clue without a clock is the order of things."
        },
        footer = {
            "",
            "Example (one line):",
            "  echo '{\"id\":\"1\",\"zone\":\"Europe/London\",\"clues\":[",
            "    {\"earlier\":\"epoch\",\"later\":\"test\",\"lo\":\"2026-05-04T07:02:00+01:00\",\"hi\":\"2026-05-04T07:04:00+01:00\",",
            "     \"clock\":{\"kind\":\"clinic\"},\"place\":\"book timer_start\",\"tolerance\":\"PT5S\"},",
            "    {\"earlier\":\"epoch\",\"later\":\"photo[0]\",\"lo\":\"2026-05-04T07:28:00+01:00\",\"hi\":\"2026-05-04T07:28:00+01:00\",",
            "     \"clock\":{\"kind\":\"phone\"},\"place\":\"DateTimeOriginal\",\"tolerance\":\"PT2M\"}],",
            "    \"windows\":[{\"check\":\"photo\",\"earlier\":\"test\",\"later\":\"photo[0]\",\"from\":\"PT20M\",\"until\":\"PT30M\"}]}' \\",
            "    | tr -d '\\n' | tidegate timing"
        })
final class TimingCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** @param setAside places of the clues that more trusted ones contradict */
    record Answer(String id, List<Verdict> verdicts, List<String> setAside) {}

    /** One verdict; the bounds of the derivation are ISO 8601 durations. */
    record Verdict(
            String check,
            String verdict,
            Optional<Integer> level,
            List<String> assumptions,
            Optional<String> margin,
            List<Step> derivation) {

        static Verdict of(WindowVerdict w) {
            return new Verdict(
                    w.check().name().toLowerCase(Locale.ROOT),
                    w.verdict().code(),
                    w.level().map(l -> l.number()),
                    w.assumptions().stream().map(Assumption::toString).toList(),
                    w.margin().map(Duration::toString),
                    w.derivation().stream()
                            .map(s -> new Step(s.clue(), s.bound().toString(), s.words()))
                            .toList());
        }
    }

    record Step(String clue, String bound, String words) {}

    @Override
    public Integer call() {
        return JsonLines.answer(spec.commandLine(), TimingCommand::answer);
    }

    private static Answer answer(JsonNode question) {
        GivenNetwork network = new GivenNetwork(GivenClues.clues(question), zone(question));
        return new Answer(
                GivenClues.text(question, "id").orElse(""),
                GivenClues.windows(question).stream()
                        .map(network::judge)
                        .map(Verdict::of)
                        .toList(),
                network.setAside());
    }

    private static ZoneId zone(JsonNode question) {
        String name = GivenClues.text(question, "zone").orElse("UTC");
        try {
            return ZoneId.of(name);
        } catch (DateTimeException e) {
            throw new JsonLines.BadQuestion("no zone: " + name);
        }
    }
}
