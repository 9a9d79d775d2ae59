package org.tidegate.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.tidegate.store.StoreException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;

/** The entry point of every command. */
@Command(
        name = "tidegate",
        mixinStandardHelpOptions = true,
        version = "Tidegate 0.1.0",
        description = {
            "Clears the results inbox of a clinic that observes rapid tests at a distance.",
            "",
            "Cautions: Tidegate sorts and times submissions; it does not diagnose. A result is released only by a",
            "trained, authorised reader. Urgent symptoms need urgent medical help. Isolation, confirmation and",
            "notification follow local codes and licensed practice."
        },
        subcommands = {
            HelpCommand.class,
            DemoCommand.class,
            WatchCommand.class,
            TakeCommand.class,
            ExamineCommand.class,
            ReadSubjectCommand.class,
            MatchCommand.class,
            TimingCommand.class,
            ReadMrzCommand.class,
            ReadCassetteCommand.class,
            TraceCommand.class,
            HandoverCommand.class,
            NotHeardCommand.class,
            OutlookCommand.class,
            TuneCommand.class,
            AuditLedgerCommand.class,
            CheckRulesCommand.class,
            AppointmentsCommand.class,
            UserCommand.class
        })
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(args, new PrintWriter(out, false, StandardCharsets.UTF_8), err);
        out.flush();
        System.exit(code);
    }

    /** Runs one command; 0 when it did its work, 2 when it refused, 1 when it failed. */
    static int run(String[] args, PrintWriter out, PrintStream err) {
        CommandLine line = new CommandLine(new Main())
                .setOut(out)
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((e, commandLine, parsed) -> explain(e, err));
        int code = line.execute(args);
        out.flush();
        return code;
    }

    private static int explain(Exception e, PrintStream err) {
        if (e instanceof Refusal || e instanceof StoreException) {
            err.println("tidegate: " + e.getMessage());
            return 2;
        }
        err.println("tidegate: this is a fault of the program: " + e);
        return 1;
    }
}
