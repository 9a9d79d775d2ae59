package org.tidegate.cli;

import java.time.Clock;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.tidegate.casework.Desk;
import org.tidegate.console.ConsoleServer;
import org.tidegate.console.WarmUp;
import org.tidegate.mailbox.MailboxException;
import org.tidegate.report.HandoverMail;
import org.tidegate.rules.Rules;
import org.tidegate.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code watch}: the daemon, and the console unless {@code --no-console}. */
@Command(
        name = "watch",
        mixinStandardHelpOptions = true,
        description =
                "Watches the mailbox, takes everything in, examines it, and serves the console. Options may stand in a file:"
                        + " tidegate watch @tidegate.conf",
        footer = {
            "",
            "Example:",
            "  tidegate watch --imap-host mail.skarrasound.example --imap-user intake --imap-password-file imap.secret"
        })
final class WatchCommand implements Callable<Integer> {

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private StoreOption storeOption = new StoreOption();

    @Mixin
    private MailboxOptions mailbox = new MailboxOptions();

    @Mixin
    private SendingOptions sending = new SendingOptions();

    @Mixin
    private OpenIdOptions openId = new OpenIdOptions();

    @Option(names = "--drain", description = "Stop when the mailbox is empty and everything is examined.")
    private boolean drain;

    @Option(
            names = "--take-only",
            description =
                    "Take in and mark; leave the examination to another process on the same store, or to a later one.")
    private boolean takeOnly;

    @Option(names = "--no-console", description = "No web pages.")
    private boolean noConsole;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            description = "Address of the console. Default: ${DEFAULT-VALUE}.",
            defaultValue = "127.0.0.1")
    private String host = "127.0.0.1";

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Port of the console, 0 for a free one. Default: ${DEFAULT-VALUE}.",
            defaultValue = "8460")
    private int port = 8460;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws InterruptedException {
        if (!drain && !noConsole) {
            WarmUp.begin();
        }
        Rules rules = rulesOption.load();
        CountDownLatch end = new CountDownLatch(1);
        AtomicReference<@Nullable Throwable> reason = new AtomicReference<>();
        try (Desk desk = storeOption.open(rules);
                Daemon daemon = new Daemon(desk, mailbox.account(), e -> {
                    reason.set(e);
                    end.countDown();
                })) {
            if (drain) {
                drain(daemon);
                return 0;
            }
            serve(desk, daemon, rules, end);
        } catch (MailboxException | StoreException | ConsoleServer.PortTaken e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
        Throwable why = reason.get();
        if (why != null) {
            throw new Refusal("stopped: " + reason(why), why);
        }
        return 0;
    }

    private void drain(Daemon daemon) throws InterruptedException {
        int taken = daemon.take();
        if (takeOnly) {
            print("Taken: " + taken + ". Nothing was examined.");
            return;
        }
        long left = daemon.examine();
        print("Taken: " + taken + ". "
                + (left == 0 ? "Everything is examined." : left + " still to be examined: run again in some minutes."));
    }

    private static String reason(Throwable why) {
        boolean told = why instanceof MailboxException || why instanceof StoreException;
        return told ? String.valueOf(why.getMessage()) : "this is a fault of the program: " + why;
    }

    private void serve(Desk desk, Daemon daemon, Rules rules, CountDownLatch end) throws InterruptedException {
        Runtime.getRuntime().addShutdownHook(new Thread(end::countDown, "stop"));
        sending.outgoing()
                .ifPresentOrElse(
                        out -> daemon.sendThrough(out, HandoverMail.of(desk, rules, Clock.systemUTC())),
                        () -> print("No --smtp-host is given: letters wait in the outbox."));
        if (noConsole) {
            daemon.start(!takeOnly);
            end.await();
            return;
        }
        try (ConsoleServer console = ConsoleServer.start(host, port, desk, rules, Clock.systemUTC(), openId.openId())) {
            print("The console is at " + console.address());
            daemon.start(!takeOnly);
            end.await();
        }
    }

    private void print(String line) {
        spec.commandLine().getOut().println(line);
        spec.commandLine().getOut().flush();
    }
}
