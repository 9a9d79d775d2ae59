package org.tidegate.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.tidegate.casework.Desk;
import org.tidegate.examination.Assessment;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Findings;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.store.StoredAssessment;
import org.tidegate.store.StoredJson;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code trace}: one submission from the raw bytes on, every assessment with its proof, every entry of the ledger. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        description =
                "Tells everything that is kept of a submission: its messages, every assessment with its proof, its ledger entries.",
        footer = {"", "Example:", "  tidegate trace SS-2K7Q", "  tidegate trace S-17"})
final class TraceCommand implements Callable<Integer> {

    private static final int PAGE = 1_000;

    @Parameters(paramLabel = "REF", description = "An appointment's reference, or a submission's number such as S-17.")
    private String ref = "";

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private StoreOption storeOption = new StoreOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        try (Desk desk = storeOption.open(rulesOption.load())) {
            return desk.store().read(tx -> {
                List<Submission> found = find(tx);
                if (found.isEmpty()) {
                    throw new Refusal("there is no submission " + ref
                            + "; give an appointment's reference or a number such as S-17.");
                }
                found.forEach(s -> print(tx, desk, s));
                return 0;
            });
        }
    }

    private List<Submission> find(Tx tx) {
        if (ref.startsWith("S-")) {
            return SubmissionId.parse(ref).flatMap(tx.submissions()::find).stream()
                    .toList();
        }
        return tx.submissions().ofTest(ref);
    }

    private void print(Tx tx, Desk desk, Submission s) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(s.id() + "  " + s.state().code()
                + s.test().map(t -> "  test " + t).orElse("  no test"));
        for (StoredMessage m : tx.messages().ofSubmission(s.id())) {
            out.println("  message " + m.id().value() + ", taken " + m.taken() + ", " + m.size()
                    + " bytes, salted hash " + m.saltedHash());
            desk.vault()
                    .findings(m)
                    .ifPresentOrElse(f -> journey(out, f), () -> out.println("    forgotten, or not examined yet"));
            tx.crops().of(m.id()).stream()
                    .filter(c -> m.shows(c.path()))
                    .forEach(c -> out.println("    cassette " + (c.cassette() + 1) + " of picture " + c.path()
                            + " by itself, salted hash " + c.saltedHash()));
        }
        for (StoredAssessment a : tx.assessments().of(s.id())) {
            out.println("  assessment " + a.number() + ", " + a.made() + ", rules " + a.rules());
            assessment(out, StoredJson.read(a.content(), Assessment.class));
        }
        entries(tx, s).forEach(line -> out.println("  ledger " + line));
    }

    private static void journey(PrintWriter out, Findings f) {
        out.println("    subject: " + f.envelope().subject().orElse("(none)"));
        f.envelope()
                .date()
                .ifPresent(d -> out.println("    Date: " + d.wall() + " "
                        + d.offset().map(Object::toString).orElse("zone unknown")));
        f.envelope().hops().forEach(h -> out.println("    Received: " + h.line()));
        f.pictures()
                .forEach(p ->
                        p.capture().forEach(c -> out.println("    " + p.path() + " " + c.place() + ": " + c.wall())));
    }

    private static void assessment(PrintWriter out, Assessment a) {
        out.println("    match: " + a.match().outcome() + ", probability "
                + a.match().probability());
        for (Discrepancy d : a.discrepancies()) {
            out.println("    " + d.severity().code() + " " + d.code().code() + ": " + d.reason());
        }
        for (WindowVerdict w : a.windows()) {
            out.println("    " + w.check() + " " + w.verdict().code() + " leaning on " + w.assumptions());
            w.derivation().forEach(step -> out.println("      " + step.words()));
        }
    }

    /** Leaves that name the submission or one of its messages. */
    private static List<String> entries(Tx tx, Submission s) {
        List<String> wanted = new ArrayList<>();
        wanted.add("\"submission\":\"" + s.id() + "\"");
        s.messages().forEach(m -> wanted.add("\"message\":\"" + m.value() + "\""));
        List<String> found = new ArrayList<>();
        long from = 0;
        for (List<byte[]> page = tx.ledger().leaves(from, PAGE);
                !page.isEmpty();
                page = tx.ledger().leaves(from, PAGE)) {
            page.stream()
                    .map(b -> new String(b, StandardCharsets.UTF_8))
                    .filter(leaf -> wanted.stream().anyMatch(leaf::contains))
                    .forEach(found::add);
            from += page.size();
        }
        return found;
    }
}
