package org.tidegate.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tidegate.examination.subject.StatedText;
import org.tidegate.examination.subject.SubjectReader;
import org.tidegate.finding.SubjectReading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code read-subject}: subject lines in, what they state out. */
@Command(
        name = "read-subject",
        mixinStandardHelpOptions = true,
        description = {
            "Reads subject lines: JSON Lines in on standard input, JSON Lines out.",
            "In: {\"id\",\"subject\",\"from\",\"received\"} with received an RFC 3339 time.",
            "Out: {\"id\",\"name\",\"test_time\",\"clinic\",\"readable\",\"problems\"}; test_time is the clinic's wall time."
        },
        footer = {
            "",
            "Example:",
            "  echo '{\"id\":\"1\",\"subject\":\"Maren Tollisker 6.34 quay\",\"from\":\"m@tarnpost.example\","
                    + "\"received\":\"2026-05-04T06:00:00Z\"}' | tidegate read-subject"
        })
final class ReadSubjectCommand implements Callable<Integer> {

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** One answer. */
    record Answer(
            String id,
            Optional<String> name,
            Optional<String> testTime,
            Optional<String> clinic,
            boolean readable,
            List<String> problems) {}

    @Override
    public Integer call() {
        SubjectReader reader = new SubjectReader(rulesOption.load());
        return SubjectLines.answer(spec.commandLine(), (id, text) -> answer(id, text, reader));
    }

    private static Answer answer(String id, StatedText text, SubjectReader reader) {
        SubjectReading best = reader.read(text).get(0);
        return new Answer(
                id,
                best.name(),
                best.testTime().map(Object::toString),
                best.clinic(),
                best.readable(),
                best.problems());
    }
}
