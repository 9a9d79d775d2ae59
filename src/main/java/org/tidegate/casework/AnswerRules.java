package org.tidegate.casework;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.finding.Findings;
import org.tidegate.message.Nature;
import org.tidegate.rules.Rules;
import org.tidegate.rules.ServiceRules;
import org.tidegate.store.Tx;
import org.tidegate.work.LetterKind;

/** Whom we never write to (RFC 3834 §2; RFC 5321 §4.5.5), whoever asks for it. */
final class AnswerRules {

    static final String TOO_MANY = "too-many";

    private static final Duration DAY = Duration.ofDays(1);

    private final ServiceRules service;
    private final MessageVault vault;

    AnswerRules(Rules rules, MessageVault vault) {
        this.service = rules.service();
        this.vault = vault;
    }

    /** A code that is stable, and words for people. */
    record Ban(String code, String words) {}

    /** @param messages what is answered; empty for a letter that answers none */
    Optional<Ban> ban(Tx tx, LetterKind kind, String to, List<Findings> messages, Instant now) {
        if (kind.internal()) {
            return Optional.empty();
        }
        if (own(to)) {
            return ban("own-address", "The letter would go to our own address.");
        }
        if (!messages.isEmpty() && messages.stream().noneMatch(AnswerRules::byAPerson)) {
            return ban(
                    "not-a-person", "No person wrote that: automatic, bulk, list and bounce mail is never answered.");
        }
        if (!kind.result() && tx.outbox().countTo(mark(to), now.minus(DAY)) >= service.repliesPerAddress()) {
            return ban(TOO_MANY, "More than " + service.repliesPerAddress() + " letters to this address within a day.");
        }
        return Optional.empty();
    }

    String mark(String address) {
        return vault.mark("address", address.strip().toLowerCase(Locale.ROOT));
    }

    boolean own(String address) {
        return Stream.concat(Stream.of(service.senderAddress()), service.ownAddresses().stream())
                .anyMatch(a -> a.equalsIgnoreCase(address.strip()));
    }

    /** Someone's own address, and a way back: an empty return path is a bounce's. */
    static boolean byAPerson(Findings f) {
        return f.envelope().nature() == Nature.PERSONAL
                && f.envelope().returnPath().filter(String::isEmpty).isEmpty();
    }

    private static Optional<Ban> ban(String code, String words) {
        return Optional.of(new Ban(code, words));
    }
}
