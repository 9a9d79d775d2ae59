package org.tidegate.cli;

import com.icegreen.greenmail.user.GreenMailUser;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.time.Duration;
import java.util.Optional;
import java.util.Properties;
import org.tidegate.mailbox.ImapAccount;
import org.tidegate.mailbox.Login;
import org.tidegate.mailbox.Marking;
import org.tidegate.mailbox.Outgoing;
import org.tidegate.mailbox.Server;
import org.tidegate.mailbox.SmtpSender;
import org.tidegate.mailbox.TlsMode;

/** A mail server inside this process for the demo: IMAP and SMTP on loopback, one mailbox. */
final class DemoMail implements AutoCloseable {

    private static final String ADDRESS = "intake@skarrasound.example";
    private static final String USER = "intake";
    private static final String PASSWORD = "demo";

    private final GreenMail server;
    private final GreenMailUser user;

    DemoMail() {
        server = new GreenMail(new ServerSetup[] {
            new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_IMAP),
            new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP)
        });
        server.start();
        user = server.setUser(ADDRESS, USER, PASSWORD);
    }

    void deliver(byte[] raw) {
        try {
            MimeMessage message = new MimeMessage(Session.getInstance(new Properties()), new ByteArrayInputStream(raw));
            server.getManagers().getImapHostManager().getInbox(user).store(message);
        } catch (Exception e) {
            throw new IllegalStateException("the demo's mail server failed", e);
        }
    }

    ImapAccount account() {
        Server imap = new Server("127.0.0.1", server.getImap().getPort(), TlsMode.PLAIN, Optional.empty());
        return new ImapAccount(
                "demo",
                imap,
                Login.password(USER, PASSWORD),
                "INBOX",
                new Marking.Keyword("$TidegateTaken"),
                2,
                Duration.ofSeconds(2));
    }

    Outgoing outgoing() {
        return new SmtpSender(
                new Server("127.0.0.1", server.getSmtp().getPort(), TlsMode.PLAIN, Optional.empty()), Optional.empty());
    }

    @Override
    public void close() {
        server.stop();
    }
}
