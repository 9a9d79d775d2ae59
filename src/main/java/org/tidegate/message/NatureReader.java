package org.tidegate.message;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Tells what no person wrote: RFC 3834 §5, RFC 3464, RFC 8098, RFC 2919, RFC 2369. */
final class NatureReader {

    private static final List<String> AUTOMATIC_REPLY_FIELDS =
            List.of("x-autoreply", "x-auto-reply", "x-autorespond", "x-autoresponder", "x-autoreply-from");
    private static final List<String> LIST_FIELDS = List.of("list-id", "list-unsubscribe", "list-post", "list-help");
    private static final List<String> MAIL_SYSTEM = List.of("mailer-daemon", "postmaster", "mail-daemon");

    private NatureReader() {}

    record Told(Nature nature, Optional<String> reason) {}

    static Told tell(HeaderSection header, Parameters type, List<Mailbox> from) {
        return report(type)
                .or(() -> automatic(header))
                .or(() -> mailSystem(header, from))
                .or(() -> list(header))
                .orElse(new Told(Nature.PERSONAL, Optional.empty()));
    }

    private static Optional<Told> report(Parameters type) {
        String kind = type.get("report-type").orElse("").toLowerCase(Locale.ROOT);
        if (!type.value().equals("multipart/report") && !type.value().equals("message/delivery-status")) {
            return Optional.empty();
        }
        boolean receipt = kind.equals("disposition-notification");
        return told(receipt ? Nature.AUTOMATIC_REPLY : Nature.BOUNCE, "Content-Type: " + type.value() + " " + kind);
    }

    private static Optional<Told> automatic(HeaderSection header) {
        Optional<String> submitted = header.first("auto-submitted")
                .map(v -> Parameters.parse(Optional.of(v)).value())
                .filter(v -> !v.isEmpty() && !v.equals("no"));
        if (submitted.isPresent()) {
            return told(Nature.AUTOMATIC_REPLY, "Auto-Submitted: " + submitted.get());
        }
        for (String name : AUTOMATIC_REPLY_FIELDS) {
            Optional<String> value = header.first(name).filter(v -> !v.equalsIgnoreCase("no"));
            if (value.isPresent()) {
                return told(Nature.AUTOMATIC_REPLY, name + ": " + value.get());
            }
        }
        String precedence = precedence(header);
        return precedence.equals("auto_reply") || precedence.equals("auto-reply")
                ? told(Nature.AUTOMATIC_REPLY, "Precedence: " + precedence)
                : Optional.empty();
    }

    private static Optional<Told> mailSystem(HeaderSection header, List<Mailbox> from) {
        Optional<String> sender = from.stream()
                .map(Mailbox::key)
                .filter(a -> MAIL_SYSTEM.contains(a.substring(0, Math.max(0, a.indexOf('@')))))
                .findFirst();
        if (sender.isPresent()) {
            return told(Nature.BOUNCE, "From: " + sender.get());
        }
        // RFC 5321 §6.1: reports travel under the null path so that they cannot bounce in turn.
        return header.first("return-path")
                        .filter(v -> v.replaceAll("\\s", "").equals("<>"))
                        .isPresent()
                ? told(Nature.BOUNCE, "Return-Path: <>")
                : Optional.empty();
    }

    private static Optional<Told> list(HeaderSection header) {
        for (String name : LIST_FIELDS) {
            if (header.first(name).isPresent()) {
                return told(Nature.LIST, name);
            }
        }
        String precedence = precedence(header);
        return List.of("bulk", "list", "junk").contains(precedence)
                ? told(Nature.LIST, "Precedence: " + precedence)
                : Optional.empty();
    }

    private static String precedence(HeaderSection header) {
        return header.first("precedence").orElse("").strip().toLowerCase(Locale.ROOT);
    }

    private static Optional<Told> told(Nature nature, String reason) {
        return Optional.of(new Told(nature, Optional.of(reason)));
    }
}
