package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.casework.Kept;
import org.tidegate.mailbox.CuttingProxy;
import org.tidegate.mailbox.ImapAccount;
import org.tidegate.mailbox.Login;
import org.tidegate.mailbox.MailboxException;
import org.tidegate.mailbox.Marking;
import org.tidegate.mailbox.Server;
import org.tidegate.mailbox.TlsMode;
import org.tidegate.rules.Rules;
import org.tidegate.store.StoreException;
import org.tidegate.store.StoreLocation;
import org.tidegate.vault.LossyLayer;

/** The daemon meets what goes wrong outside: nothing is lost, and one clear line says what happened. */
@Isolated("listens to the daemon's log")
class FaultTest {

    private static final int MESSAGES = 60;
    private static final String FOLDER = "Results";

    @TempDir
    Path folder;

    private final CrashMail mail = new CrashMail(FOLDER);
    private final DaemonLog log = new DaemonLog();
    private final BlockingQueue<Throwable> fatal = new LinkedBlockingQueue<>();

    @BeforeEach
    void deliver() throws Exception {
        mail.deliver(MESSAGES);
    }

    @AfterEach
    void stop() {
        log.close();
        mail.close();
    }

    @Test
    void aConnectionCutInTheMiddleOfAFetch() throws Exception {
        try (CuttingProxy proxy = new CuttingProxy(mail.port(), 9_000, 1);
                Desk desk = Desk.open(config());
                Daemon daemon = new Daemon(desk, account(proxy.port(), CrashMail.PASSWORD), fatal::add)) {
            daemon.take();
            assertThat(proxy.cutsLeft()).isZero();
            whole(desk);
        }
        assertThat(log.with("The connection to " + CrashMail.USER + " failed ("))
                .singleElement()
                .asString()
                .endsWith("next try in 1 s.");
    }

    @Test
    void aFolderNumberedAnew() throws Exception {
        try (Desk desk = Desk.open(config());
                Daemon daemon = new Daemon(desk, account(mail.port(), CrashMail.PASSWORD), fatal::add)) {
            daemon.take();
            mail.numberAnew();
            daemon.take();
            whole(desk);
            Kept.messages(desk)
                    .forEach(m -> assertThat(
                                    desk.store().<Long>read(tx -> tx.messages().sightings(m.id())))
                            .isEqualTo(2));
        }
        assertThat(log.with("numbered the folder of " + CrashMail.USER + " anew"))
                .hasSize(1);
    }

    @Test
    void aLoginRefusedThreeTimes() throws Exception {
        try (Desk desk = Desk.open(config())) {
            try (Daemon daemon = new Daemon(desk, account(mail.port(), "wrong"), fatal::add)) {
                assertThatThrownBy(daemon::take)
                        .isInstanceOf(MailboxException.class)
                        .hasMessageContaining("refused the login of " + CrashMail.USER + " 3 times")
                        .hasMessageContaining("check user name and password");
            }
            assertThat(log.with("next try in")).hasSize(2);
            afterwards(desk);
        }
    }

    @Test
    void aDiskThatIsFull() throws Exception {
        LossyLayer disk = new LossyLayer();
        try (Desk desk = Desk.open(config().withFiles(disk))) {
            disk.limit(20_000);
            try (Daemon daemon = new Daemon(desk, account(mail.port(), CrashMail.PASSWORD), fatal::add)) {
                daemon.start(true);
                assertThat(fatal.poll(60, TimeUnit.SECONDS))
                        .isInstanceOf(StoreException.class)
                        .hasMessage("The message cannot be kept: No space left on device");
            }
            assertThat(mail.marked())
                    .isLessThan(MESSAGES)
                    .isLessThanOrEqualTo(Kept.messages(desk).size());
            disk.limit(Long.MAX_VALUE);
            afterwards(desk);
        }
    }

    @Test
    void aDatabaseThatIsFull() throws Exception {
        Desk.open(config()).close();
        Path file = folder.resolve("tidegate.db");
        long pages = Files.size(file) / 4096 + 8;
        StoreLocation full = new StoreLocation.Embedded(folder.resolve("tidegate.db?max_page_count=" + pages));
        try (Desk desk = Desk.open(DeskConfig.of(folder, full, Rules.bundled(), Clock.systemUTC()));
                Daemon daemon = new Daemon(desk, account(mail.port(), CrashMail.PASSWORD), fatal::add)) {
            daemon.start(true);
            assertThat(fatal.poll(60, TimeUnit.SECONDS))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("database or disk is full");
        }
        assertThat(mail.marked()).isLessThan(MESSAGES);
        try (Desk desk = Desk.open(config())) {
            afterwards(desk);
        }
    }

    /** Once the cause is mended everything is taken. */
    private void afterwards(Desk desk) throws Exception {
        try (Daemon daemon = new Daemon(desk, account(mail.port(), CrashMail.PASSWORD), fatal::add)) {
            daemon.take();
            daemon.examine();
        }
        whole(desk);
    }

    private void whole(Desk desk) throws Exception {
        Kept.whole(desk, mail.delivered());
        assertThat(mail.marked()).isEqualTo(MESSAGES);
    }

    private DeskConfig config() {
        return DeskConfig.embedded(folder, Rules.bundled(), Clock.systemUTC());
    }

    private static ImapAccount account(int port, String password) {
        return new ImapAccount(
                CrashMail.USER,
                new Server("127.0.0.1", port, TlsMode.PLAIN, Optional.empty()),
                Login.password(CrashMail.USER, password),
                FOLDER,
                new Marking.Keyword(CrashMail.KEYWORD),
                3,
                Duration.ofSeconds(2));
    }
}
