package org.tidegate.mailbox;

import jakarta.activation.DataHandler;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.util.ByteArrayDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A letter to one person, to be written as a message: plain text, and the same as HTML beside it (RFC 2046 §5.1.4).
 *
 * @param sender address of the From field and of the envelope
 * @param senderName display name
 * @param to one address (RFC 5322 §3.4.1)
 * @param messageId without angle brackets
 * @param date with the zone in which it is to be shown
 * @param language BCP 47
 * @param text paragraphs parted by empty lines
 * @param inReplyTo without angle brackets
 * @param references oldest first, without angle brackets
 * @param file a file that goes with it (RFC 2183 attachment)
 */
public record Letter(
        String sender,
        String senderName,
        String to,
        String messageId,
        ZonedDateTime date,
        String language,
        String subject,
        String text,
        Optional<String> inReplyTo,
        List<String> references,
        Optional<File> file) {

    /** @param type RFC 6838 */
    public record File(String name, String type, byte[] content) {}

    /** RFC 5322 §3.6.4, as far as it needs no comments: anything else would let a stranger's header write ours. */
    private static final Pattern ID = Pattern.compile("[\\x21-\\x7e&&[^<>]]{1,250}");

    /** RFC 5322 §2.1.1 leaves no room for endless threads. */
    private static final int MOST_REFERENCES = 20;

    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}+");

    public Letter {
        references = List.copyOf(references);
    }

    /** @throws IllegalArgumentException where an address cannot be written to */
    public OutgoingMail mail() {
        try {
            MimeMessage message = new WithId(messageId);
            message.setFrom(new InternetAddress(sender, oneLine(senderName), StandardCharsets.UTF_8.name()));
            message.setRecipient(Message.RecipientType.TO, new InternetAddress(to, true));
            message.setSubject(oneLine(subject), StandardCharsets.UTF_8.name());
            message.setHeader("Date", DateTimeFormatter.RFC_1123_DATE_TIME.format(date));
            message.setHeader("Content-Language", oneLine(language));
            // RFC 3834 §5: no machine is to answer this.
            message.setHeader("Auto-Submitted", inReplyTo.isPresent() ? "auto-replied" : "auto-generated");
            thread(message);
            message.setContent(content());
            message.saveChanges();
            ByteArrayOutputStream raw = new ByteArrayOutputStream();
            message.writeTo(raw);
            return new OutgoingMail(sender, List.of(to), raw.toByteArray());
        } catch (MessagingException | IOException e) {
            throw new IllegalArgumentException("The letter cannot be written: " + e.getMessage(), e);
        }
    }

    private void thread(MimeMessage message) throws MessagingException {
        Optional<String> answered = inReplyTo.filter(id -> ID.matcher(id).matches());
        if (answered.isPresent()) {
            message.setHeader("In-Reply-To", "<" + answered.get() + ">");
        }
        List<String> known =
                references.stream().filter(id -> ID.matcher(id).matches()).toList();
        List<String> kept = known.subList(Math.max(0, known.size() - MOST_REFERENCES), known.size());
        if (!kept.isEmpty()) {
            message.setHeader(
                    "References", kept.stream().map(id -> "<" + id + ">").collect(Collectors.joining("\r\n ")));
        }
    }

    private MimeMultipart content() throws MessagingException {
        if (file.isEmpty()) {
            return bodies();
        }
        MimeBodyPart letter = new MimeBodyPart();
        letter.setContent(bodies());
        MimeMultipart all = new MimeMultipart("mixed");
        all.addBodyPart(letter);
        all.addBodyPart(attached(file.get()));
        return all;
    }

    private static MimeBodyPart attached(File file) throws MessagingException {
        MimeBodyPart part = new MimeBodyPart();
        part.setDataHandler(new DataHandler(new ByteArrayDataSource(file.content(), file.type())));
        part.setFileName(oneLine(file.name()));
        part.setDisposition(Part.ATTACHMENT);
        return part;
    }

    private MimeMultipart bodies() throws MessagingException {
        MimeBodyPart plain = new MimeBodyPart();
        plain.setText(text, StandardCharsets.UTF_8.name());
        MimeBodyPart html = new MimeBodyPart();
        html.setText(LetterHtml.of(language, oneLine(subject), text), StandardCharsets.UTF_8.name(), "html");
        MimeMultipart both = new MimeMultipart("alternative");
        both.addBodyPart(plain);
        both.addBodyPart(html);
        return both;
    }

    private static String oneLine(String text) {
        return CONTROL.matcher(text).replaceAll(" ").strip();
    }

    /** Keeps the Message-ID, so that it is the same at every try. */
    private static final class WithId extends MimeMessage {
        private final String id;

        WithId(String id) {
            super(Session.getInstance(new Properties()));
            this.id = id;
        }

        @Override
        protected void updateMessageID() throws MessagingException {
            setHeader("Message-ID", "<" + id + ">");
        }
    }
}
