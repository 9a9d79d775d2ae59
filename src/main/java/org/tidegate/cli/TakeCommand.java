package org.tidegate.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidegate.casework.Desk;
import org.tidegate.casework.IntakeService;
import org.tidegate.mailbox.Intake;
import org.tidegate.rules.Rules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code take}: messages from files as if they had arrived. */
@Command(
        name = "take",
        mixinStandardHelpOptions = true,
        description = "Takes messages in from files as if they had arrived, and examines them.",
        footer = {"", "Example:", "  tidegate take sample-mailbox/*.eml", "  tidegate take --maildir ~/Maildir"})
final class TakeCommand implements Callable<Integer> {

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private StoreOption storeOption = new StoreOption();

    @Option(names = "--maildir", paramLabel = "DIR", description = "A Maildir: everything in its cur and new.")
    private @Nullable Path maildir;

    @Option(names = "--mbox", paramLabel = "FILE", description = "A file of messages in mbox form (RFC 4155).")
    private @Nullable Path mbox;

    @Parameters(arity = "0..*", paramLabel = "FILE", description = "Messages, RFC 5322.")
    private List<Path> files = List.of();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        Rules rules = rulesOption.load();
        if (files.isEmpty() && maildir == null && mbox == null) {
            throw new Refusal("nothing to take: name files, --maildir or --mbox.");
        }
        int taken = 0;
        int known = 0;
        try (Desk desk = storeOption.open(rules)) {
            for (Path file : all()) {
                IntakeService.Taken t = desk.intake().take(MessageFiles.read(file, rules.limits()), Optional.empty());
                taken += t.receipt() == Intake.Receipt.NEW ? 1 : 0;
                known += t.receipt() == Intake.Receipt.KNOWN ? 1 : 0;
            }
            if (mbox != null) {
                for (byte[] message : MboxFile.read(mbox)) {
                    IntakeService.Taken t = desk.intake().take(message, Optional.empty());
                    taken += t.receipt() == Intake.Receipt.NEW ? 1 : 0;
                    known += t.receipt() == Intake.Receipt.KNOWN ? 1 : 0;
                }
            }
            desk.worker().drain();
        }
        spec.commandLine().getOut().println("Taken: " + taken + ", known before: " + known + ".");
        return 0;
    }

    private List<Path> all() {
        List<Path> all = new ArrayList<>(files);
        if (maildir != null) {
            for (String part : List.of("cur", "new")) {
                try (Stream<Path> listed = Files.list(maildir.resolve(part))) {
                    listed.filter(Files::isRegularFile).sorted().forEach(all::add);
                } catch (IOException | UncheckedIOException e) {
                    throw new Refusal(maildir + " is no Maildir: " + part + " cannot be listed.", e);
                }
            }
        }
        return all;
    }
}
