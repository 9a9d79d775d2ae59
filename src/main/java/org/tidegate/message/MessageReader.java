package org.tidegate.message;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads one message from its raw bytes. Never throws on any bytes: what cannot be read becomes a {@link Problem}. */
public final class MessageReader {

    static {
        LenientMail.switchOn();
    }

    private MessageReader() {}

    public static MailMessage read(byte[] raw, Limits limits) {
        List<Problem> problems = new ArrayList<>();
        byte[] bytes = raw;
        if (raw.length > limits.messageBytes()) {
            problems.add(new Problem(
                    Problem.Kind.OVER_LIMIT,
                    "message",
                    "The message is larger than the limit; its end was not looked at."));
            bytes = Arrays.copyOf(raw, (int) limits.messageBytes());
        }
        Headers headers = Headers.read(bytes, limits, problems);
        PartWalker walker = new PartWalker(limits, problems);
        walker.message(bytes);
        return new MailMessage(envelope(headers, walker.text()), walker.attachments(), List.copyOf(problems));
    }

    private static Envelope envelope(Headers headers, String text) {
        List<Mailbox> from = Mailboxes.read(headers, "From");
        List<Mailbox> to = new ArrayList<>(Mailboxes.read(headers, "To"));
        to.addAll(Mailboxes.read(headers, "Cc"));
        Optional<String> returnPath =
                headers.first("Return-Path").map(v -> v.replaceAll("[<>]", "").strip());
        NatureReader.Reading nature = NatureReader.read(headers, from, returnPath);
        return new Envelope(
                headers.decoded("Subject"),
                from,
                Mailboxes.read(headers, "Reply-To"),
                List.copyOf(to),
                returnPath,
                headers.first("Date").flatMap(HeaderDates::parse),
                Mailboxes.identifiers(headers, "Message-ID").stream().findFirst(),
                Mailboxes.identifiers(headers, "In-Reply-To", "References"),
                TraceReader.hops(headers),
                TraceReader.authentication(headers),
                DkimReader.read(headers),
                nature.nature(),
                nature.reason(),
                headers.decoded("X-Mailer").or(() -> headers.decoded("User-Agent")),
                text,
                headers.first("Content-Language"));
    }
}
