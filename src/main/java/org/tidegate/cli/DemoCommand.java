package org.tidegate.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.console.ConsoleServer;
import org.tidegate.console.Passwords;
import org.tidegate.report.HandoverMail;
import org.tidegate.rules.Rules;
import org.tidegate.store.QuarantinedLot;
import org.tidegate.work.Role;
import org.tidegate.work.User;
import org.tidegate.work.UserId;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code demo}: the sample morning on embedded servers. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description =
                "Plays the sample morning: a mail server and a database inside this process, the daemon and the console, on a"
                        + " clock set to 4 May 2026. Messages arrive as the clock passes their times.",
        footer = {
            "",
            "Example:",
            "  tidegate demo --once    takes everything in, prints the table and the figures, and exits"
        })
final class DemoCommand implements Callable<Integer> {

    private static final Instant START = Instant.parse("2026-05-04T08:30:00Z");

    @Option(names = "--once", description = "Take everything in, print the table and the figures, and exit.")
    private boolean once;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Port of the console, 0 for a free one. Default: ${DEFAULT-VALUE}.",
            defaultValue = "8460")
    private int port = 8460;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException, InterruptedException {
        Rules rules = rulesOption.load();
        Path data = Files.createTempDirectory("tidegate-demo");
        try (DemoMail mail = new DemoMail()) {
            if (once) {
                once(data, rules, mail);
            } else {
                play(data, rules, mail);
            }
        } catch (ConsoleServer.PortTaken e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        } finally {
            remove(data);
        }
        return 0;
    }

    private void once(Path data, Rules rules, DemoMail mail) throws IOException, InterruptedException {
        List<DemoRow> rows = morning(data, rules, mail, SampleMorning.messages());
        PrintWriter out = spec.commandLine().getOut();
        out.println(DemoTable.print(rows, rules.timing().zone()));
        out.println("A trained reader decides on every result; urgent symptoms need urgent medical help.");
        out.flush();
    }

    /** Every message taken from the mail server and examined at the time at which it arrived. */
    static List<DemoRow> morning(Path data, Rules rules, DemoMail mail, List<SampleMorning.Mail> messages)
            throws IOException, InterruptedException {
        StageClock clock = new StageClock(START);
        try (Desk desk = desk(data, rules, clock);
                Daemon daemon = new Daemon(desk, mail.account(), e -> {})) {
            for (SampleMorning.Mail m : messages) {
                clock.put(m.arrived());
                mail.deliver(m.raw());
                daemon.take();
                daemon.examine();
                daemon.answer(mail.outgoing(), HandoverMail.of(desk, rules, clock));
            }
            return new DemoTable(desk, rules.timing().zone()).rows();
        }
    }

    private void play(Path data, Rules rules, DemoMail mail) throws IOException, InterruptedException {
        Clock clock = Clock.offset(Clock.systemUTC(), Duration.between(Instant.now(), START));
        CountDownLatch end = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(end::countDown, "stop"));
        try (Desk desk = desk(data, rules, clock)) {
            desk.store().write(tx -> {
                tx.users()
                        .save(new User(
                                new UserId("demo"), "Demo", Set.of(Role.values()), Passwords.encode("demo"), true));
                return true;
            });
            try (Daemon daemon = new Daemon(desk, mail.account(), e -> end.countDown());
                    ConsoleServer console = ConsoleServer.start("127.0.0.1", port, desk, rules, clock)) {
                print("The console is at " + console.address() + "  Sign in as demo, password demo. Stop with Ctrl-C.");
                daemon.start(true);
                daemon.sendThrough(mail.outgoing(), HandoverMail.of(desk, rules, clock));
                feed(mail, clock, end);
            }
        }
    }

    /** Delivers each message when the demo's clock passes the time at which it arrived. */
    private static void feed(DemoMail mail, Clock clock, CountDownLatch end) throws InterruptedException {
        for (SampleMorning.Mail m : SampleMorning.messages()) {
            Duration wait = Duration.between(clock.instant(), m.arrived());
            if (!wait.isNegative() && end.await(wait.toMillis(), TimeUnit.MILLISECONDS)) {
                return;
            }
            mail.deliver(m.raw());
        }
        end.await();
    }

    private static Desk desk(Path data, Rules rules, Clock clock) throws IOException {
        Desk desk = Desk.open(DeskConfig.embedded(data, rules, clock));
        desk.books().replace(SampleMorning.book(), UserId.DAEMON);
        desk.store().write(tx -> {
            tx.registers().add(SampleMorning.OUTAGE);
            tx.registers()
                    .quarantine(new QuarantinedLot(
                            SampleMorning.QUARANTINED_LOT, START, "as the sample's story says", UserId.DAEMON));
            return true;
        });
        return desk;
    }

    private void print(String line) {
        spec.commandLine().getOut().println(line);
        spec.commandLine().getOut().flush();
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(p);
            }
        }
    }
}
