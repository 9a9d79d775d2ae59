package org.tidegate.message;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Tells automatic, bounced and list mail from what a person wrote (RFC 3834 §2, RFC 3464, RFC 2919, RFC 2369). */
final class NatureReader {

    private static final List<String> MAIL_SYSTEMS = List.of("mailer-daemon@", "postmaster@", "mail-daemon@");

    record Reading(Nature nature, Optional<String> reason) {}

    private NatureReader() {}

    static Reading read(Headers headers, List<Mailbox> from, Optional<String> returnPath) {
        Optional<String> bounce = bounce(headers, from, returnPath);
        if (bounce.isPresent()) {
            return new Reading(Nature.BOUNCE, bounce);
        }
        Optional<String> automatic = automatic(headers);
        if (automatic.isPresent()) {
            return new Reading(Nature.AUTOMATIC_REPLY, automatic);
        }
        Optional<String> list = list(headers);
        return list.isPresent() ? new Reading(Nature.LIST, list) : new Reading(Nature.PERSONAL, Optional.empty());
    }

    private static Optional<String> bounce(Headers headers, List<Mailbox> from, Optional<String> returnPath) {
        boolean report = headers.lower("Content-Type")
                .filter(t -> t.startsWith("multipart/report"))
                .isPresent();
        if (report) {
            return Optional.of("Content-Type: multipart/report");
        }
        boolean system = from.stream().anyMatch(m -> MAIL_SYSTEMS.stream().anyMatch(m.key()::startsWith));
        if (system) {
            return Optional.of("From: a mail system");
        }
        if (headers.has("X-Failed-Recipients")) {
            return Optional.of("X-Failed-Recipients");
        }
        return returnPath.filter(String::isEmpty).map(p -> "Return-Path: <>");
    }

    private static Optional<String> automatic(Headers headers) {
        Optional<String> submitted = headers.lower("Auto-Submitted")
                .map(v -> HeaderDates.withoutComments(v).strip())
                .filter(v -> !v.equals("no") && !v.isEmpty());
        if (submitted.isPresent()) {
            return submitted.map(v -> "Auto-Submitted: " + v);
        }
        for (String name :
                List.of("X-Autoreply", "X-Autorespond", "X-Autoresponder", "X-Auto-Response-Suppress-Reply")) {
            if (headers.has(name)) {
                return Optional.of(name);
            }
        }
        return headers.lower("Precedence")
                .filter(p -> p.replace('-', '_').equals("auto_reply"))
                .map(p -> "Precedence: " + p);
    }

    private static Optional<String> list(Headers headers) {
        for (String name : List.of("List-Id", "List-Unsubscribe", "List-Post")) {
            if (headers.has(name)) {
                return Optional.of(name);
            }
        }
        return headers.lower("Precedence")
                .map(p -> p.toLowerCase(Locale.ROOT))
                .filter(List.of("bulk", "list", "junk")::contains)
                .map(p -> "Precedence: " + p);
    }
}
