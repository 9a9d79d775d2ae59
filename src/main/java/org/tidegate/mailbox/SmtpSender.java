package org.tidegate.mailbox;

import jakarta.mail.Address;
import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import jakarta.mail.SendFailedException;
import jakarta.mail.Session;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.time.Duration;
import java.util.Optional;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPTransport;

/** Sends by SMTP submission (RFC 6409), one connection a message. */
public final class SmtpSender implements Outgoing {

    /** RFC 5321 §4.5.3.2.6: ten minutes for the answer to the end of the data. */
    private static final Duration ANSWER = Duration.ofMinutes(10);

    private final Server server;
    private final Optional<Login> login;

    /** @param login empty where the server asks for none */
    public SmtpSender(Server server, Optional<Login> login) {
        this.server = server;
        this.login = login;
    }

    @Override
    public SendResult send(OutgoingMail mail) {
        String protocol = MailSessions.protocol("smtp", server);
        Session session = MailSessions.session(protocol, server, login, ANSWER.toMillis());
        session.getProperties()
                .setProperty("mail." + protocol + ".from", mail.envelopeFrom().isEmpty() ? "<>" : mail.envelopeFrom());
        session.getProperties().setProperty("mail." + protocol + ".quitwait", "false");
        try {
            Address[] recipients = recipients(mail);
            MimeMessage message = new MimeMessage(session, new ByteArrayInputStream(mail.raw()));
            SMTPTransport transport = (SMTPTransport) session.getTransport(protocol);
            try {
                connect(transport);
                return handOver(transport, message, recipients);
            } finally {
                close(transport);
            }
        } catch (AuthenticationFailedException e) {
            return new SendResult.Refused(true, "The server " + server + " refused the login: " + words(e));
        } catch (AddressException e) {
            return new SendResult.Refused(true, "An address cannot be written to: " + words(e));
        } catch (MessagingException e) {
            return new SendResult.Refused(false, "The server " + server + " cannot be reached: " + words(e));
        }
    }

    private static Address[] recipients(OutgoingMail mail) throws AddressException {
        Address[] addresses = new Address[mail.recipients().size()];
        for (int i = 0; i < addresses.length; i++) {
            addresses[i] = new InternetAddress(mail.recipients().get(i), true);
        }
        return addresses;
    }

    private void connect(SMTPTransport transport) throws MessagingException {
        transport.connect(
                server.host(),
                server.port(),
                login.map(Login::user).orElse(null),
                login.map(l -> l.secret().get()).orElse(null));
    }

    /** From here on only an answer of the server makes it certain that nothing was sent. */
    private static SendResult handOver(SMTPTransport transport, MimeMessage message, Address[] recipients) {
        try {
            transport.sendMessage(message, recipients);
            return new SendResult.Accepted();
        } catch (MessagingException e) {
            int code = replyCode(e);
            return code >= 400
                    ? new SendResult.Refused(code >= 500, words(e))
                    : new SendResult.Uncertain("The connection broke while sending: " + words(e));
        }
    }

    /** The server's reply code; -1 where it gave none. */
    private static int replyCode(MessagingException e) {
        for (Exception at = e; at instanceof MessagingException m; at = m.getNextException()) {
            if (at instanceof SMTPSendFailedException f && f.getReturnCode() >= 400) {
                return f.getReturnCode();
            }
            if (at instanceof SMTPAddressFailedException f && f.getReturnCode() >= 400) {
                return f.getReturnCode();
            }
        }
        return e instanceof SendFailedException && !(e instanceof SMTPSendFailedException) ? 550 : -1;
    }

    private static String words(MessagingException e) {
        return Optional.ofNullable(e.getMessage())
                .orElse(e.getClass().getSimpleName())
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static void close(SMTPTransport transport) {
        try {
            transport.close();
        } catch (MessagingException e) {
            // The answer was given already; how the line closes says nothing more.
        }
    }
}
