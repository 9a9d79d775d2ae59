package org.tidegate.cli;

import com.icegreen.greenmail.imap.AuthorizationException;
import com.icegreen.greenmail.imap.ImapHostManager;
import com.icegreen.greenmail.store.FolderException;
import com.icegreen.greenmail.store.StoredMessage;
import com.icegreen.greenmail.user.GreenMailUser;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.Flags;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Random;

/** A mail server in this process with small messages of the invented morning. */
final class CrashMail implements AutoCloseable {

    static final String USER = "intake";
    static final String PASSWORD = "secret";
    static final String KEYWORD = "$TidegateTaken";

    private final GreenMail server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_IMAP));
    private final GreenMailUser user;
    private final String folder;
    private final List<byte[]> delivered = new ArrayList<>();
    private final Random random = new Random(20260504);

    CrashMail() {
        this("INBOX");
    }

    CrashMail(String folder) {
        this.folder = folder;
        server.start();
        user = server.setUser("intake@skarrasound.example", USER, PASSWORD);
        makeFolder();
    }

    private void makeFolder() {
        try {
            if (!folder.equals("INBOX")) {
                folders().createMailbox(user, folder);
            }
        } catch (AuthorizationException | FolderException e) {
            throw new IllegalStateException(e);
        }
    }

    private ImapHostManager folders() {
        return server.getManagers().getImapHostManager();
    }

    int port() {
        return server.getImap().getPort();
    }

    List<byte[]> delivered() {
        return List.copyOf(delivered);
    }

    void deliver(int count) throws Exception {
        for (int i = 0; i < count; i++) {
            deliver(message(delivered.size(), random));
        }
    }

    void deliver(byte[] raw) throws Exception {
        delivered.add(raw);
        append(raw);
    }

    private void append(byte[] raw) throws Exception {
        MimeMessage message = new MimeMessage(Session.getInstance(new Properties()), new ByteArrayInputStream(raw));
        folders().getFolder(user, folder).appendMessage(message, new Flags(), new Date(0));
    }

    /** The same messages under another UIDVALIDITY; not for INBOX. */
    void numberAnew() throws Exception {
        folders().deleteMailbox(user, folder);
        // This server numbers folders by the second.
        Thread.sleep(1_100);
        makeFolder();
        for (byte[] raw : delivered) {
            append(raw);
        }
    }

    /** Every octet a mail may bear, line ends as the standard wants them. */
    static byte[] message(int number, Random random) {
        StringBuilder text = new StringBuilder();
        int lines = 3 + random.nextInt(30);
        for (int line = 0; line < lines; line++) {
            text.append("line ").append(Long.toString(random.nextLong(), 36)).append(" \u00e9\u00ff\t.\r\n");
        }
        String minute = String.format(Locale.ROOT, "%02d", number % 60);
        return ("Received: from out.crew.example (out.crew.example [203.0.113.9])\r\n\tby mx.skarrasound.example;"
                        + " Mon, 4 May 2026 07:" + minute + ":00 +0100\r\nFrom: Crew " + number + " <crew" + number
                        + "@tarnpost.example>\r\nTo: intake@skarrasound.example\r\nMessage-ID: <m" + number
                        + "@tarnpost.example>\r\nDate: Mon, 4 May 2026 07:" + minute
                        + ":00 +0100\r\nSubject: Crew Number"
                        + number + " 07:02 QUAY\r\n\r\n" + text)
                .getBytes(StandardCharsets.ISO_8859_1);
    }

    long marked() throws Exception {
        long marked = 0;
        for (StoredMessage m : folders().getFolder(user, folder).getMessages()) {
            marked += m.getFlags().contains(KEYWORD) ? 1 : 0;
        }
        return marked;
    }

    @Override
    public void close() {
        server.stop();
    }
}
