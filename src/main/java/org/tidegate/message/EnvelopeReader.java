package org.tidegate.message;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Header fields and text of a message as plain facts. */
final class EnvelopeReader {

    private static final Pattern MESSAGE_ID = Pattern.compile("<([^<>\\s]+)>");

    private final List<Problem> problems;
    private final List<DkimSignature> dkim;

    EnvelopeReader(List<Problem> problems, List<DkimSignature> dkim) {
        this.problems = problems;
        this.dkim = dkim;
    }

    Envelope read(Part root, String text) {
        HeaderSection header = root.header();
        List<Mailbox> from =
                governing(header, "from").map(f -> Mailboxes.parse(f.value())).orElse(List.of());
        NatureReader.Told nature = NatureReader.tell(header, Parameters.parse(header.first("content-type")), from);
        return new Envelope(
                governing(header, "subject").map(Field::decoded),
                from,
                mailboxes(header, "reply-to"),
                recipients(header),
                header.first("return-path").map(EnvelopeReader::path),
                header.first("date").flatMap(this::date),
                header.first("message-id").flatMap(v -> ids(v).stream().findFirst()),
                references(header),
                Trace.hops(header),
                Authentication.results(header),
                dkim,
                nature.nature(),
                nature.reason(),
                header.first("x-mailer").or(() -> header.first("user-agent")).map(EncodedWords::decode),
                text,
                header.first("content-language")
                        .map(v -> v.split("[,;]", 2)[0].strip())
                        .filter(v -> !v.isEmpty()));
    }

    /**
     * The field that counts where several stand. RFC 6376 §5.4.2: signers take them from the bottom, so the lowest is the signed
     * one; without a signature over it the first counts.
     */
    private Optional<Field> governing(HeaderSection header, String name) {
        List<Field> all = header.all(name);
        if (all.size() < 2) {
            return all.stream().findFirst();
        }
        problems.add(new Problem(
                Problem.Kind.MALFORMED,
                name,
                "The field " + name + " stands " + all.size() + " times; it may stand once."));
        boolean signed = dkim.stream().anyMatch(s -> s.signedHeaders().contains(name));
        return Optional.of(all.get(signed ? all.size() - 1 : 0));
    }

    private Optional<HeaderDate> date(String value) {
        Optional<HeaderDate> date = HeaderDates.parse(value);
        if (date.isEmpty()) {
            problems.add(new Problem(Problem.Kind.MALFORMED, "date", "The Date field cannot be read."));
        }
        return date;
    }

    private static List<Mailbox> mailboxes(HeaderSection header, String name) {
        return header.all(name).stream()
                .flatMap(f -> Mailboxes.parse(f.value()).stream())
                .toList();
    }

    private static List<Mailbox> recipients(HeaderSection header) {
        List<Mailbox> all = new ArrayList<>(mailboxes(header, "to"));
        all.addAll(mailboxes(header, "cc"));
        return List.copyOf(all);
    }

    private static String path(String value) {
        return value.replaceAll("[<>\\s]", "");
    }

    private static List<String> references(HeaderSection header) {
        Set<String> ids = new LinkedHashSet<>();
        header.first("references").ifPresent(v -> ids.addAll(ids(v)));
        header.first("in-reply-to").ifPresent(v -> ids.addAll(ids(v)));
        return List.copyOf(ids);
    }

    private static List<String> ids(String value) {
        List<String> ids = new ArrayList<>();
        Matcher m = MESSAGE_ID.matcher(value);
        while (m.find()) {
            ids.add(m.group(1));
        }
        return ids;
    }
}
