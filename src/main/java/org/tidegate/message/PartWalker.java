package org.tidegate.message;

import jakarta.mail.MessagingException;
import jakarta.mail.Multipart;
import jakarta.mail.Part;
import jakarta.mail.Session;
import jakarta.mail.internet.ContentType;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;

/** Walks the parts of a message (RFC 2045, RFC 2046) and collects text and files within the limits. */
final class PartWalker {

    private static final Session SESSION = Session.getInstance(new Properties());

    private final Limits limits;
    private final List<Problem> problems;
    private final FileOpener files;
    private final BodyText body;
    private int parts;

    PartWalker(Limits limits, List<Problem> problems) {
        this.limits = limits;
        this.problems = problems;
        this.files = new FileOpener(limits, problems);
        this.body = new BodyText(limits.textChars());
    }

    String text() {
        return body.text();
    }

    List<Attachment> attachments() {
        return files.attachments();
    }

    void message(byte[] raw) {
        try {
            walk(new MimeMessage(SESSION, new ByteArrayInputStream(raw)), "", 0, Attachment.Container.MESSAGE);
        } catch (MessagingException | RuntimeException e) {
            malformed("message", e);
        }
    }

    private void walk(Part part, String path, int depth, Attachment.Container container) {
        if (++parts > limits.parts() || depth > limits.depth()) {
            problems.add(new Problem(
                    Problem.Kind.OVER_LIMIT, path, "More or deeper parts than the limit; the rest was not looked at."));
            return;
        }
        try {
            if (part.isMimeType("multipart/*") && part.getContent() instanceof Multipart multipart) {
                children(multipart, path, depth, container);
            } else if (part.isMimeType("message/rfc822")) {
                nested(part, path, depth);
            } else {
                leaf(part, path.isEmpty() ? "1" : path, container);
            }
        } catch (MessagingException | IOException | RuntimeException e) {
            malformed(path, e);
            leafOrNothing(part, path, container);
        }
    }

    private void children(Multipart multipart, String path, int depth, Attachment.Container container)
            throws MessagingException {
        List<Part> children = new ArrayList<>();
        for (int i = 0; i < multipart.getCount(); i++) {
            children.add(multipart.getBodyPart(i));
        }
        body.alternatives(multipart.getContentType().toLowerCase(Locale.ROOT).startsWith("multipart/alternative"));
        for (int i = 0; i < children.size(); i++) {
            walk(children.get(i), path.isEmpty() ? String.valueOf(i + 1) : path + "." + (i + 1), depth + 1, container);
        }
    }

    private void nested(Part part, String path, int depth) throws MessagingException, IOException {
        try (InputStream in = part.getInputStream()) {
            byte[] raw = in.readNBytes((int) Math.min(Integer.MAX_VALUE - 8L, limits.attachmentBytes()));
            Headers inner = Headers.read(raw, limits, problems);
            inner.decoded("Subject").ifPresent(s -> body.append("Subject: " + s));
            walk(
                    new MimeMessage(SESSION, new ByteArrayInputStream(raw)),
                    path,
                    depth + 1,
                    Attachment.Container.FORWARDED_MESSAGE);
        }
    }

    private void leafOrNothing(Part part, String path, Attachment.Container container) {
        try {
            leaf(part, path.isEmpty() ? "1" : path, container);
        } catch (MessagingException | IOException | RuntimeException e) {
            malformed(path, e);
        }
    }

    private void leaf(Part part, String path, Attachment.Container container) throws MessagingException, IOException {
        byte[] content = content(part, path);
        String type = declaredType(part);
        Optional<String> name = fileName(part);
        boolean attached = Part.ATTACHMENT.equalsIgnoreCase(part.getDisposition());
        if (!attached && name.isEmpty() && type.startsWith("text/") && !type.equals("text/calendar")) {
            body.part(content, type, charset(part));
            return;
        }
        boolean inline = Part.INLINE.equalsIgnoreCase(part.getDisposition()) || part.getHeader("Content-ID") != null;
        files.open(path, name, type, container, inline, content, 0);
    }

    private byte[] content(Part part, String path) throws MessagingException, IOException {
        int most = (int) Math.min(limits.attachmentBytes(), Integer.MAX_VALUE - 8L);
        try (InputStream in = part.getInputStream()) {
            byte[] content = in.readNBytes(most);
            if (content.length == most) {
                problems.add(new Problem(
                        Problem.Kind.OVER_LIMIT, path, "A file larger than the limit; its end was not looked at."));
            }
            return content;
        }
    }

    private static String declaredType(Part part) throws MessagingException {
        try {
            return new ContentType(part.getContentType()).getBaseType().toLowerCase(Locale.ROOT);
        } catch (jakarta.mail.internet.ParseException e) {
            return part.getContentType().split("[;\\s]", 2)[0].toLowerCase(Locale.ROOT);
        }
    }

    private static Optional<String> charset(Part part) throws MessagingException {
        try {
            return Optional.ofNullable(new ContentType(part.getContentType()).getParameter("charset"));
        } catch (jakarta.mail.internet.ParseException e) {
            return Optional.empty();
        }
    }

    private static Optional<String> fileName(Part part) throws MessagingException {
        return Optional.ofNullable(part.getFileName())
                .map(Headers::decode)
                .map(n -> n.substring(Math.max(n.lastIndexOf('/'), n.lastIndexOf('\\')) + 1)
                        .strip())
                .filter(n -> !n.isEmpty());
    }

    private void malformed(String path, Exception e) {
        problems.add(new Problem(
                Problem.Kind.MALFORMED,
                path.isEmpty() ? "message" : path,
                "This part could not be read fully: " + e.getClass().getSimpleName() + "."));
    }
}
