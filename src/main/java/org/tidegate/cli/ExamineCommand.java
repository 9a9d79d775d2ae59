package org.tidegate.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidegate.booking.AppointmentBook;
import org.tidegate.examination.Inspector;
import org.tidegate.examination.OpenTests;
import org.tidegate.examination.SmallInbox;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code examine}: inspect and assess messages from files without storing anything. */
@Command(
        name = "examine",
        mixinStandardHelpOptions = true,
        description =
                "Inspects and assesses messages from files without storing anything: one JSON object a message, in the order"
                        + " given; a later message sees the earlier ones. Schema: shared/schemas/examine.schema.json.",
        footer = {
            "",
            "Example:",
            "  tidegate examine --appointments sample-mailbox/appointments.csv sample-mailbox/*.eml"
        })
final class ExamineCommand implements Callable<Integer> {

    @Option(
            names = "--appointments",
            required = true,
            paramLabel = "FILE",
            description = "The appointment book (CSV, JSON or iCalendar).")
    private Path appointments = Path.of("");

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Option(names = "--delivered", paramLabel = "TIME", description = "Delivery time of bare files, RFC 3339.")
    private @Nullable String delivered;

    @Option(names = "--explain", description = "Plain text for people instead of JSON.")
    private boolean explain;

    @Parameters(arity = "1..*", paramLabel = "FILE.eml", description = "Messages as received, RFC 5322.")
    private List<Path> files = List.of();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        Rules rules = rulesOption.load();
        AppointmentBook book = Books.read(appointments);
        Inspector inspector = new Inspector(rules);
        SmallInbox inbox = new SmallInbox(rules, OpenTests.of(book.tests()), List.of(), Set.of());
        PrintWriter out = spec.commandLine().getOut();
        DeliveryFacts facts = new DeliveryFacts(deliveryTime(), ExamineOutput.PICTURE_KEY.clone(), List.of());
        for (Path file : files) {
            Findings findings = inspector.inspect(MessageFiles.read(file, rules.limits()), facts);
            ExamineOutput result = ExamineOutput.of(file.toString(), findings, inbox.add(findings));
            out.println(explain ? result.explain() : result.json());
            out.flush();
        }
        return 0;
    }

    private Optional<Instant> deliveryTime() {
        return Optional.ofNullable(delivered).map(ExamineCommand::instant);
    }

    private static Instant instant(String text) {
        try {
            return java.time.OffsetDateTime.parse(text).toInstant();
        } catch (java.time.format.DateTimeParseException e) {
            throw new Refusal(
                    "--delivered must be an RFC 3339 time such as 2026-05-04T07:40:00+01:00, not '" + text + "'.", e);
        }
    }
}
