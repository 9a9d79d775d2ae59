package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.Needs;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.casework.Kept;
import org.tidegate.mailbox.ImapAccount;
import org.tidegate.mailbox.Login;
import org.tidegate.mailbox.Marking;
import org.tidegate.mailbox.Server;
import org.tidegate.mailbox.TlsMode;
import org.tidegate.rules.Rules;

/** Outside check: a real IMAP server of another hand, over TLS with a certificate of its own, keywords and IDLE. */
@Tag("peer")
class DovecotTest {

    private static final int MESSAGES = 50;

    @TempDir
    Path folder;

    private final List<byte[]> delivered = new ArrayList<>();
    private final Random random = new Random(50);
    private Dovecot server;

    @BeforeEach
    void start() throws Exception {
        Needs.that(
                Files.isExecutable(Dovecot.PROGRAM) && "root".equals(System.getProperty("user.name")),
                "Dovecot (package dovecot-imapd), run as root");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        server = new Dovecot(Files.createDirectory(folder.resolve("dovecot")));
        for (int i = 0; i < MESSAGES; i++) {
            deliver();
        }
    }

    @AfterEach
    void stop() throws Exception {
        if (server != null) {
            server.close();
        }
    }

    @Test
    void drainsByteForByteAndMarks() throws Exception {
        Ran first = watch("--imap-trust", server.certificateFile());
        assertThat(first.code()).as(first.err() + server.log()).isZero();
        assertThat(first.out()).contains("Taken: " + MESSAGES + ". Everything is examined.");
        assertThat(server.marked(CrashMail.KEYWORD)).isEqualTo(MESSAGES);
        assertThat(watch("--imap-trust", server.certificateFile()).out()).contains("Taken: 0.");
        try (Desk desk = Desk.open(config())) {
            Kept.whole(desk, delivered);
        }
    }

    @Test
    void aCertificateThatNobodyTrustsIsRefused() throws Exception {
        Ran ran = watch();
        assertThat(ran.code()).isNotZero();
        assertThat(ran.err()).contains("certificate that is not trusted");
    }

    /** The next look would be an hour away: only the server can have told. */
    @Test
    void takesWhatArrivesWhileItWaits() throws Exception {
        ImapAccount account = new ImapAccount(
                CrashMail.USER,
                new Server("localhost", server.port(), TlsMode.IMPLICIT, Optional.of(server.certificateFile())),
                Login.password(CrashMail.USER, CrashMail.PASSWORD),
                "INBOX",
                new Marking.Keyword(CrashMail.KEYWORD),
                3,
                Duration.ofHours(1));
        try (Desk desk = Desk.open(config());
                Daemon daemon = new Daemon(desk, account, e -> {})) {
            daemon.start(true);
            awaitStored(desk, MESSAGES);
            deliver();
            awaitStored(desk, MESSAGES + 1);
            Kept.whole(desk, delivered);
        }
    }

    private void awaitStored(Desk desk, int count) throws Exception {
        for (int tries = 0; tries < 1200 && Kept.messages(desk).size() < count; tries++) {
            Thread.sleep(100);
        }
        assertThat(Kept.messages(desk)).as(server.log()).hasSize(count);
    }

    private void deliver() throws Exception {
        byte[] raw = CrashMail.message(delivered.size(), random);
        server.deliver("17778.M" + delivered.size() + ".host", raw);
        delivered.add(raw);
    }

    private Ran watch(Object... more) throws Exception {
        Path secret = Files.writeString(folder.resolve("secret"), CrashMail.PASSWORD);
        List<Object> words = new ArrayList<>(List.of(
                "watch",
                "--drain",
                "--data",
                folder.resolve("data"),
                "--imap-host",
                "localhost",
                "--imap-port",
                server.port(),
                "--imap-user",
                CrashMail.USER,
                "--imap-password-file",
                secret));
        words.addAll(List.of(more));
        return Ran.command(words.toArray());
    }

    private DeskConfig config() {
        return DeskConfig.embedded(folder.resolve("data"), Rules.bundled(), Clock.systemUTC());
    }
}
