package org.tidegate.message;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a message from its raw bytes. Stateless; the same bytes and limits always give the same result. */
public final class MessageReader {

    private final Limits limits;
    private final List<Problem> problems = new ArrayList<>();
    private final AttachmentCollector files;
    private final StringBuilder forwarded = new StringBuilder();

    private MessageReader(Limits limits) {
        this.limits = limits;
        this.files = new AttachmentCollector(limits, problems);
    }

    /**
     * Reads whatever bytes: nothing is thrown for any content; what is malformed or over a limit stands among the problems.
     *
     * @param raw a message as received (RFC 5322), or anything else; not changed
     * @param limits bounds on the work
     */
    public static MailMessage read(byte[] raw, Limits limits) {
        return read(raw, limits, KeySource.NONE);
    }

    /** As {@link #read(byte[], Limits)}, verifying DKIM signatures for which a key was recorded. */
    public static MailMessage read(byte[] raw, Limits limits, KeySource keys) {
        return new MessageReader(limits).readWhole(raw, keys);
    }

    private MailMessage readWhole(byte[] raw, KeySource keys) {
        int length = (int) Math.min(raw.length, limits.messageBytes());
        if (length < raw.length) {
            files.problem(
                    Problem.Kind.OVER_LIMIT,
                    "message",
                    "The message is larger than " + limits.messageBytes() + " bytes.");
        }
        Part root = new MimeTree(limits, problems).read(new Slice(raw, 0, length), "");
        if (root.header().fields().isEmpty()) {
            files.problem(Problem.Kind.MALFORMED, "message", "There is no header: this is no email message.");
        }
        String own = new BodyText(limits, problems).of(root);
        collect(root, Attachment.Container.MESSAGE, 0);
        List<DkimSignature> dkim = DkimCheck.verified(raw, Authentication.signatures(root.header()), keys);
        Envelope envelope = new EnvelopeReader(problems, dkim).read(root, joined(own));
        return new MailMessage(envelope, files.found(), distinct());
    }

    private String joined(String own) {
        String all = (own + "\n" + forwarded).strip();
        return all.length() <= limits.textChars() ? all : all.substring(0, limits.textChars());
    }

    private void collect(Part part, Attachment.Container container, int depth) {
        if (part.isMultipart()) {
            part.children().forEach(child -> collect(child, container, depth));
        } else if (part.isMessage()) {
            forwarded(part, depth);
        } else if (!part.isBodyText() && files.hasRoom(part.path())) {
            file(part, container);
        }
    }

    /** A message in the message: its files count, and its words stand below the sender's own as in a forward by hand. */
    private void forwarded(Part part, int depth) {
        if (depth >= limits.depth()) {
            files.problem(
                    Problem.Kind.OVER_LIMIT,
                    part.path(),
                    "Messages are nested deeper than " + limits.depth() + " levels.");
            return;
        }
        byte[] decoded = part.decoded(problems);
        Part inner = new MimeTree(limits, problems).read(Slice.of(decoded), part.path() + "/");
        for (String name : List.of("subject", "from", "date")) {
            inner.header().all(name).stream()
                    .findFirst()
                    .ifPresent(f ->
                            forwarded.append('\n').append(f.name()).append(": ").append(f.decoded()));
        }
        forwarded
                .append("\n\n")
                .append(new BodyText(limits, problems).of(inner))
                .append('\n');
        collect(inner, Attachment.Container.FORWARDED_MESSAGE, depth + 1);
    }

    private void file(Part part, Attachment.Container container) {
        // Base64 shrinks by a quarter; a body that must be over the limit is not even decoded.
        if (part.header().body().length() / 4L * 2 > limits.attachmentBytes()) {
            files.tooLarge(part.path());
            return;
        }
        byte[] content = part.decoded(problems);
        Optional<String> name = part.fileName();
        files.add(new Attachment(
                part.path(),
                name,
                part.type().value(),
                FileTypes.detect(content),
                container,
                part.isInline(),
                content));
    }

    /** One of each: a damaged part is met once for its text and once for its files. */
    private List<Problem> distinct() {
        return problems.stream().distinct().toList();
    }
}
