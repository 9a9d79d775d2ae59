package org.tidegate.cli;

import java.nio.file.Path;
import org.tidegate.casework.Desk;
import org.tidegate.work.UserId;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code appointments}: the appointment book of the store. */
@Command(
        name = "appointments",
        mixinStandardHelpOptions = true,
        description = "The appointment book of the store.",
        synopsisSubcommandLabel = "import")
final class AppointmentsCommand implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    @Command(
            name = "import",
            mixinStandardHelpOptions = true,
            description = "Makes a book the valid one. What is open is assessed again; nothing is overwritten.",
            footer = {"", "Example:", "  tidegate appointments import appointments.csv"})
    int importBook(
            @Mixin RulesOption rulesOption,
            @Mixin StoreOption storeOption,
            @Parameters(paramLabel = "FILE", description = "CSV, JSON or iCalendar.") Path file) {
        try (Desk desk = storeOption.open(rulesOption.load())) {
            int changed = desk.books().replace(Books.read(file), UserId.DAEMON);
            desk.worker().drain();
            spec.commandLine().getOut().println("Tests that are new, changed or gone: " + changed + ".");
        }
        return 0;
    }
}
