package org.tidegate.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidegate.booking.AppointmentBook;
import org.tidegate.examination.Assessment;
import org.tidegate.examination.OpenTests;
import org.tidegate.examination.SmallInbox;
import org.tidegate.examination.timing.Outage;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.Findings;
import org.tidegate.message.RecordedKey;
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
            "  tidegate examine --appointments sample-mailbox/appointments.csv sample-mailbox/*.eml",
            "  tidegate examine --appointments sample-mailbox/appointments.csv --explain \\",
            "    --outage 2026-05-04T07:30:00+01:00/2026-05-04T09:10:00+01:00 --quarantined-lot SK2604Q sample-mailbox/1*.eml",
            "  tidegate examine --appointments sample-mailbox/appointments.csv --enclosure pages sample-mailbox/12-sent-late.eml"
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

    @Option(
            names = "--outage",
            paramLabel = "FROM/TO",
            description = "A time in which our own mail was down, two RFC 3339 times; may be given several times.")
    private List<String> outages = List.of();

    @Option(
            names = "--quarantined-lot",
            paramLabel = "LOT",
            description = "A kit lot that the clinic has set aside; may be given several times.")
    private Set<String> quarantinedLots = Set.of();

    @Option(
            names = "--dkim-keys",
            paramLabel = "FILE",
            description =
                    "Keys of signing domains as recorded: selector._domainkey.domain, a tab, the TXT record; a line a key.")
    private @Nullable Path dkimKeys;

    @Option(
            names = "--enclosure",
            paramLabel = "FOLDER",
            description =
                    "Also writes, for each message with verdicts on time, the page for a participant who disputes them"
                            + " (A4, in the booked language) as FOLDER/FILE.pdf and FILE.svg.")
    private @Nullable Path enclosures;

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
        Decoders.Installed here = Decoders.installed(rules);
        SmallInbox inbox = new SmallInbox(
                rules,
                OpenTests.of(book.tests()),
                outages.stream().map(ExamineCommand::outage).toList(),
                quarantinedLots);
        PrintWriter out = spec.commandLine().getOut();
        DeliveryFacts facts =
                new DeliveryFacts(deliveryTime(), ExamineOutput.PICTURE_KEY.clone(), here.names(), recordedKeys());
        for (Path file : files) {
            Findings findings = here.inspection()
                    .inspect(MessageFiles.read(file, rules.limits()), facts)
                    .findings();
            SmallInbox.Taken taken = inbox.take(findings);
            Assessment assessment = taken.assessment();
            if (enclosures != null) {
                EnclosureFiles.write(enclosures, file, taken, rules);
            }
            out.println(
                    explain
                            ? ExamineText.of(file.toString(), assessment)
                            : ExamineOutput.of(file.toString(), findings, assessment)
                                    .json());
            out.flush();
        }
        if (explain) {
            out.println(ExamineText.CAUTION);
        }
        return 0;
    }

    private List<RecordedKey> recordedKeys() {
        return dkimKeys == null ? List.of() : DkimKeys.read(dkimKeys);
    }

    private Optional<Instant> deliveryTime() {
        return Optional.ofNullable(delivered).map(text -> instant("--delivered", text));
    }

    private static Outage outage(String text) {
        String[] ends = text.split("/", 2);
        Instant from = instant("--outage", ends[0]);
        Instant to = instant("--outage", ends.length == 2 ? ends[1] : "");
        if (to.isBefore(from)) {
            throw new Refusal("--outage ends before it begins: " + text);
        }
        return new Outage(from, to);
    }

    private static Instant instant(String option, String text) {
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeParseException e) {
            throw new Refusal(
                    option + " needs RFC 3339 times such as 2026-05-04T07:40:00+01:00, not '" + text + "'.", e);
        }
    }
}
