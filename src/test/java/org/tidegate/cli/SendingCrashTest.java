package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesFolder;
import org.tidegate.store.NewLetter;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.UserId;

/**
 * {@code watch} as a process of its own, killed by SIGKILL while it sends. All forty kills: {@code mvn -Dfast test
 * -Dtest=SendingCrashTest -Dsimulation.share=1}; an ordinary run has four. What was killed is counted in the output.
 */
class SendingCrashTest {

    private static final double SHARE = Double.parseDouble(System.getProperty("simulation.share", "0.1"));
    private static final int KILLS = Math.max(4, (int) (40 * SHARE));
    private static final int LETTERS_BEFORE_EACH = 12;

    @TempDir
    Path folder;

    private final CrashMail mail = new CrashMail();
    private final GreenMail smtp = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private final Random random = new Random(11);
    private int written;

    @BeforeEach
    void start() throws IOException {
        RulesFolder.copyTo(folder.resolve("rules")).withoutHandover();
        smtp.start();
    }

    @AfterEach
    void stop() {
        smtp.stop();
        mail.close();
    }

    @Test
    void noLetterGoesTwiceAndNoneIsLost() throws Exception {
        for (int i = 0; i < KILLS; i++) {
            write();
            int before = smtp.getReceivedMessages().length;
            WatchChild child = watch();
            awaitReceived(before + 1 + random.nextInt(LETTERS_BEFORE_EACH - 4));
            Thread.sleep(random.nextInt(20));
            assertThat(child.kill()).as(logged()).isEqualTo(WatchChild.KILLED);
        }
        WatchChild last = watch();
        while (waiting()) {
            Thread.sleep(200);
        }
        last.kill();
        try (Desk desk = desk()) {
            desk.sending(m -> {
                        throw new IllegalStateException("nothing waits any more");
                    })
                    .markUnfinished(Duration.ZERO);
            Map<OutboxState, Integer> ends = judged(desk);
            System.out.println("Sending: " + KILLS + " kills, " + written + " letters: " + ends + "; none went twice.");
        }
    }

    private Map<OutboxState, Integer> judged(Desk desk) throws MessagingException {
        Map<String, Integer> arrived = new TreeMap<>();
        for (MimeMessage m : smtp.getReceivedMessages()) {
            arrived.merge(m.getHeader("Message-ID", null), 1, Integer::sum);
        }
        assertThat(arrived.values()).allMatch(n -> n == 1);
        Map<OutboxState, Integer> ends = new TreeMap<>();
        List<OutboxLetter> all = desk.outbox().written(Instant.EPOCH, Instant.parse("2100-01-01T00:00:00Z"));
        assertThat(all).hasSize(written);
        for (OutboxLetter l : all) {
            ends.merge(l.state(), 1, Integer::sum);
            boolean here = arrived.containsKey("<" + l.messageId() + ">");
            // Sent means that it is there; whatever is not there is shown as uncertain.
            assertThat(l.state()).isIn(OutboxState.SENT, OutboxState.UNCERTAIN);
            assertThat(here || l.state() == OutboxState.UNCERTAIN).as("%s", l).isTrue();
        }
        assertThat(ends.getOrDefault(OutboxState.UNCERTAIN, 0)).isLessThanOrEqualTo(KILLS + 1);
        return ends;
    }

    private void write() throws Exception {
        try (Desk desk = desk()) {
            desk.store().write(tx -> {
                for (int i = 0; i < LETTERS_BEFORE_EACH; i++) {
                    tx.outbox().add(letter(++written));
                }
                return true;
            });
        }
    }

    private static NewLetter letter(int number) {
        Instant now = Instant.now();
        LetterText text = new LetterText(
                "crew" + number + "@tarnpost.example",
                "en",
                "About your test",
                "Hello,\n\nthis is letter " + number + ".",
                Optional.empty(),
                List.of());
        return new NewLetter(
                Optional.empty(),
                LetterKind.REMINDER,
                text,
                "mark" + number,
                "letter" + number + "@skarrasound.example",
                "crash-test",
                UserId.DAEMON,
                now,
                now,
                Optional.empty());
    }

    private boolean waiting() throws Exception {
        try (Desk desk = desk()) {
            return !desk.outbox().inState(OutboxState.WAITING).isEmpty();
        }
    }

    private void awaitReceived(int count) throws InterruptedException {
        for (int i = 0; smtp.getReceivedMessages().length < count; i++) {
            assertThat(i).as("letters that never came").isLessThan(60_000);
            Thread.sleep(5);
        }
    }

    private Desk desk() throws Exception {
        return Desk.open(DeskConfig.embedded(folder.resolve("data"), Rules.bundled(), Clock.systemUTC()));
    }

    private WatchChild watch() throws Exception {
        return WatchChild.start(
                folder.resolve("watch.log"),
                "256m",
                Main.class,
                "watch",
                "--no-console",
                "--rules",
                folder.resolve("rules"),
                "--data",
                folder.resolve("data"),
                "--imap-host",
                "127.0.0.1",
                "--imap-port",
                mail.port(),
                "--imap-tls",
                "plain",
                "--imap-user",
                CrashMail.USER,
                "--smtp-host",
                "127.0.0.1",
                "--smtp-port",
                smtp.getSmtp().getPort(),
                "--smtp-tls",
                "plain");
    }

    private String logged() throws Exception {
        Path log = folder.resolve("watch.log");
        return Files.exists(log) ? Files.readString(log) : "";
    }
}
