package org.tidegate.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.casework.Milestones;
import org.tidegate.mailbox.ImapAccount;
import org.tidegate.mailbox.Login;
import org.tidegate.mailbox.Marking;
import org.tidegate.mailbox.Server;
import org.tidegate.mailbox.TlsMode;
import org.tidegate.rules.Rules;

/**
 * An entry point for the crash test: the daemon of {@code watch}, which stands still at the n-th passing of one commit boundary,
 * says so, and waits to be killed. Arguments: data folder, port, boundary, n.
 */
final class HaltingWatch {

    static final String REACHED = "reached ";

    private HaltingWatch() {}

    public static void main(String[] args) throws Exception {
        Milestones.Boundary boundary = Milestones.Boundary.valueOf(args[2]);
        DeskConfig config = DeskConfig.embedded(Path.of(args[0]), Rules.bundled(), Clock.systemUTC())
                .withMilestones(new HaltAt(boundary, Integer.parseInt(args[3])));
        try (Desk desk = Desk.open(config);
                Daemon daemon = new Daemon(desk, account(Integer.parseInt(args[1])), Throwable::printStackTrace)) {
            daemon.start(true);
            new CountDownLatch(1).await();
        }
    }

    /** As {@code watch} names it. */
    private static ImapAccount account(int port) {
        Server server = new Server("127.0.0.1", port, TlsMode.PLAIN, Optional.empty());
        return new ImapAccount(
                CrashMail.USER,
                server,
                Login.password(CrashMail.USER, CrashMail.PASSWORD),
                "INBOX",
                new Marking.Keyword(CrashMail.KEYWORD),
                3,
                Duration.ofSeconds(2));
    }

    /** Whoever passes any boundary after the halt stands still too. */
    private static final class HaltAt implements Milestones {
        private final Boundary boundary;
        private final AtomicInteger left;
        private boolean halted;

        HaltAt(Boundary boundary, int nth) {
            this.boundary = boundary;
            this.left = new AtomicInteger(nth);
        }

        @Override
        public synchronized void passed(Boundary now) {
            if (!halted && now == boundary && left.decrementAndGet() == 0) {
                halted = true;
                System.out.println(REACHED + now);
                System.out.flush();
            }
            while (halted) {
                try {
                    wait();
                } catch (InterruptedException e) {
                    throw new IllegalStateException("halted", e);
                }
            }
        }
    }
}
