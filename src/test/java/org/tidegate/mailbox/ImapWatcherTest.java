package org.tidegate.mailbox;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ImapWatcherTest {

    private final GreenMail server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_IMAP));
    private final Map<Long, byte[]> taken = new ConcurrentHashMap<>();
    private final List<MailboxEvent> events = new ArrayList<>();

    @BeforeEach
    void start() {
        server.start();
        server.setUser("intake@skarrasound.example", "intake", "secret");
    }

    @AfterEach
    void stop() {
        server.stop();
    }

    private void deliver(int number) throws Exception {
        String text = "From: crew@tarnmail.example\r\nSubject: Test " + number + "\r\n\r\nHello " + number + "\r\n";
        MimeMessage message = new MimeMessage(
                Session.getInstance(new Properties()),
                new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII)));
        server.getUserManager().getUser("intake").deliver(message);
    }

    private ImapWatcher watcher() {
        Server address = new Server("127.0.0.1", server.getImap().getPort(), TlsMode.PLAIN, Optional.empty());
        ImapAccount account = ImapAccount.of("quay", address, Login.password("intake", "secret"), "INBOX");
        return new ImapWatcher(
                account,
                (sighting, raw) -> {
                    taken.put(sighting.uid(), raw);
                    return Intake.Receipt.NEW;
                },
                event -> {
                    synchronized (events) {
                        events.add(event);
                    }
                },
                length -> {});
    }

    @Test
    void drainsEverythingOnce() throws Exception {
        for (int i = 0; i < 60; i++) {
            deliver(i);
        }
        try (ImapWatcher watcher = watcher()) {
            assertThat(watcher.drain()).isEqualTo(60);
            assertThat(watcher.drain()).isZero();
        }
        assertThat(taken).hasSize(60);
        assertThat(new String(taken.values().iterator().next(), StandardCharsets.US_ASCII))
                .contains("Hello");
    }
}
