package org.tidegate.mailbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.icegreen.greenmail.store.MailFolder;
import com.icegreen.greenmail.user.GreenMailUser;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.Flags;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against an IMAP server in the same JVM. */
class ImapWatcherTest {

    private static final String KEYWORD = "$TidegateTaken";

    private final GreenMail server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_IMAP));
    private final Map<Sighting, byte[]> taken = new ConcurrentHashMap<>();
    private final List<MailboxEvent> events = Collections.synchronizedList(new ArrayList<>());
    private final List<Duration> pauses = Collections.synchronizedList(new ArrayList<>());

    private GreenMailUser user;

    @BeforeEach
    void start() {
        server.start();
        user = server.setUser("intake@skarrasound.example", "intake", "secret");
    }

    @AfterEach
    void stop() {
        server.stop();
    }

    @Test
    void drainsEverythingOnce() throws Exception {
        deliver(60, 100);
        try (ImapWatcher watcher = watcher(account(port(), "secret"))) {
            assertThat(watcher.drain()).isEqualTo(60);
            assertThat(watcher.drain()).isZero();
        }
        assertThat(taken).hasSize(60);
        assertThat(subjects()).hasSize(60);
        assertThat(marked()).isEqualTo(60);
    }

    @Test
    void takesALargeMessageInPieces() throws Exception {
        deliver(1, 9_500_000);
        try (ImapWatcher watcher = watcher(account(port(), "secret"))) {
            assertThat(watcher.drain()).isEqualTo(1);
        }
        byte[] raw = taken.values().iterator().next();
        assertThat(raw.length).isGreaterThan(9_500_000);
        assertThat(new String(raw, StandardCharsets.US_ASCII))
                .startsWith("From: crew@")
                .endsWith("end 0\r\n");
    }

    /** Cut anywhere, in the greeting, the login, the search, or the middle of a FETCH: nothing is lost. */
    @ParameterizedTest
    @ValueSource(ints = {1, 60, 150, 300, 700, 1500, 5_000, 20_000, 60_000, 150_000})
    void survivesAConnectionCutAtAnyByte(int cutAfter) throws Exception {
        deliver(30, 6_000);
        try (CuttingProxy proxy = new CuttingProxy(port(), cutAfter, 3);
                ImapWatcher watcher = watcher(account(proxy.port(), "secret"))) {
            assertThat(watcher.drain()).as("cut after %d", cutAfter).isEqualTo(30);
        }
        assertThat(subjects()).as("cut after %d", cutAfter).hasSize(30);
        assertThat(marked()).as("cut after %d", cutAfter).isEqualTo(30);
    }

    @Test
    void marksNothingThatTheIntakeDidNotTake() throws Exception {
        deliver(5, 100);
        Intake full = (sighting, raw) -> {
            if (taken.size() == 2) {
                throw new IllegalStateException("no space left");
            }
            taken.put(sighting, raw);
            return Intake.Receipt.NEW;
        };
        try (ImapWatcher watcher = new ImapWatcher(account(port(), "secret"), full, events::add, pauses::add)) {
            assertThatThrownBy(watcher::drain).hasMessage("no space left");
        }
        // What came together is marked together: all five are offered again, which is harmless to the two.
        assertThat(marked()).isZero();
    }

    @Test
    void saysClearlyThatTheLoginWasRefusedThreeTimes() {
        try (ImapWatcher watcher = watcher(account(port(), "wrong"))) {
            assertThatThrownBy(watcher::drain)
                    .isInstanceOf(MailboxException.class)
                    .hasMessageContaining("refused the login of intake 3 times");
        }
        assertThat(pauses).containsExactly(Duration.ofSeconds(1), Duration.ofSeconds(2));
    }

    @Test
    void saysClearlyThatNobodyAnswers() throws Exception {
        int closed = port();
        server.stop();
        try (ImapWatcher watcher = watcher(account(closed, "secret"))) {
            assertThatThrownBy(watcher::drain)
                    .isInstanceOf(MailboxException.class)
                    .hasMessageContaining("Check host, port and network");
        }
        assertThat(pauses).startsWith(Duration.ofSeconds(1), Duration.ofSeconds(2), Duration.ofSeconds(4));
    }

    @Test
    void goesOnAfterTheFolderWasNumberedAnew() throws Exception {
        var folders = server.getManagers().getImapHostManager();
        MailFolder first = folders.createMailbox(user, "Results");
        first.appendMessage(message(1, 100), new Flags(), new Date(0));
        ImapAccount account = account(port(), "secret", "Results", new Marking.Keyword(KEYWORD));
        try (ImapWatcher watcher = watcher(account)) {
            assertThat(watcher.drain()).isEqualTo(1);
            folders.deleteMailbox(user, "Results");
            // This server numbers folders by the second.
            Thread.sleep(1_100);
            folders.createMailbox(user, "Results").appendMessage(message(1, 100), new Flags(), new Date(0));
            assertThat(watcher.drain()).isEqualTo(1);
        }
        assertThat(taken.keySet()).extracting(Sighting::uidValidity).doesNotHaveDuplicates();
        assertThat(events).anyMatch(e -> e instanceof MailboxEvent.ValidityChanged);
    }

    @Test
    void aVanishedMessageIsNoFault() throws Exception {
        deliver(2, 100);
        Fetcher fetcher = new Fetcher(account(port(), "secret"), this::take, events::add);
        try (ImapLink link = ImapLink.open(account(port(), "secret"))) {
            List<Long> uids = new ArrayList<>(link.unmarked());
            uids.add(9_999L);
            assertThat(fetcher.take(link, new Batch(uids, 200))).hasSize(2);
        }
    }

    @Test
    void movesWhereTheOperatorWantsItSo() throws Exception {
        deliver(3, 100);
        server.getManagers().getImapHostManager().createMailbox(user, "Taken");
        try (ImapWatcher watcher = watcher(account(port(), "secret", "INBOX", new Marking.Move("Taken")))) {
            assertThat(watcher.drain()).isEqualTo(3);
        }
        assertThat(inbox().getMessageCount()).isZero();
        assertThat(server.getManagers()
                        .getImapHostManager()
                        .getFolder(user, "Taken")
                        .getMessageCount())
                .isEqualTo(3);
    }

    @Test
    void takesWhatArrivesWhileItWatches() throws Exception {
        CountDownLatch two = new CountDownLatch(2);
        Intake counting = (sighting, raw) -> {
            two.countDown();
            return take(sighting, raw);
        };
        try (ImapWatcher watcher = new ImapWatcher(account(port(), "secret"), counting, events::add, pauses::add)) {
            Thread thread = new Thread(() -> watchQuietly(watcher));
            thread.start();
            deliver(1, 100);
            Thread.sleep(300);
            user.deliver(message(7, 100));
            assertThat(two.await(20, TimeUnit.SECONDS)).isTrue();
            watcher.close();
            thread.join(5_000);
            assertThat(thread.isAlive()).isFalse();
        }
    }

    private static void watchQuietly(ImapWatcher watcher) {
        try {
            watcher.watch();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Intake.Receipt take(Sighting sighting, byte[] raw) {
        return taken.put(sighting, raw) == null ? Intake.Receipt.NEW : Intake.Receipt.KNOWN;
    }

    private ImapWatcher watcher(ImapAccount account) {
        return new ImapWatcher(account, this::take, events::add, pauses::add);
    }

    private int port() {
        return server.getImap().getPort();
    }

    private static ImapAccount account(int port, String password) {
        return account(port, password, "INBOX", new Marking.Keyword(KEYWORD));
    }

    private static ImapAccount account(int port, String password, String folder, Marking marking) {
        Server address = new Server("127.0.0.1", port, TlsMode.PLAIN, Optional.empty());
        return new ImapAccount(
                "quay", address, Login.password("intake", password), folder, marking, 3, Duration.ofSeconds(2));
    }

    private void deliver(int count, int length) throws Exception {
        for (int i = 0; i < count; i++) {
            user.deliver(message(i, length));
        }
    }

    private static MimeMessage message(int number, int length) throws Exception {
        byte[] filler = new byte[length];
        Arrays.fill(filler, (byte) 'x');
        for (int i = 70; i + 1 < length; i += 72) {
            filler[i] = '\r';
            filler[i + 1] = '\n';
        }
        String text = "From: crew@tarnmail.example\r\nSubject: Test " + number + "\r\n\r\n"
                + new String(filler, StandardCharsets.US_ASCII) + "\r\nend " + number + "\r\n";
        return new MimeMessage(
                Session.getInstance(new Properties()),
                new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII)));
    }

    private MailFolder inbox() throws Exception {
        return server.getManagers().getImapHostManager().getInbox(user);
    }

    private Set<String> subjects() {
        Set<String> subjects = ConcurrentHashMap.newKeySet();
        taken.values()
                .forEach(raw -> new String(raw, StandardCharsets.US_ASCII)
                        .lines()
                        .filter(l -> l.startsWith("Subject:"))
                        .forEach(subjects::add));
        return subjects;
    }

    private long marked() throws Exception {
        return inbox().getMessages().stream()
                .filter(m -> m.getFlags().contains(KEYWORD))
                .count();
    }
}
