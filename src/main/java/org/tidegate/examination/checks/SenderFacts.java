package org.tidegate.examination.checks;

import java.util.Locale;
import java.util.Optional;
import org.tidegate.examination.timing.TrustedResults;
import org.tidegate.finding.Findings;
import org.tidegate.message.Envelope;
import org.tidegate.message.Mailbox;

/** Who sent it, and what their words are about. */
final class SenderFacts {

    private SenderFacts() {}

    static void add(CheckInput in, FactSheet sheet) {
        Envelope last = in.last().envelope();
        sheet.fact("nature", last.nature().name().toLowerCase(Locale.ROOT));
        sheet.figure("nature_reason", last.natureReason().orElse(""));
        sheet.fact(
                "urgent", in.messages().stream().anyMatch(m -> !m.urgentWords().isEmpty()));
        sheet.figure("urgent_words", String.join(", ", urgentWords(in)));
        sheet.fact("sender_known", in.messages().stream().allMatch(m -> isKnown(m, in)));
        sheet.figure(
                "sender", last.from().stream().findFirst().map(Mailbox::address).orElse("no sender"));
        sheet.fact("dmarc", dmarc(in));
    }

    private static java.util.List<String> urgentWords(CheckInput in) {
        return in.messages().stream()
                .flatMap(m -> m.urgentWords().stream())
                .distinct()
                .toList();
    }

    /** Whether a message came from the booked address; true where nothing is booked to compare with. */
    private static boolean isKnown(Findings message, CheckInput in) {
        Optional<String> booked = in.test().flatMap(t -> t.appointment().email());
        return booked.isEmpty()
                || message.envelope().from().stream()
                        .anyMatch(m -> m.key().equals(booked.get().toLowerCase(Locale.ROOT)));
    }

    private static String dmarc(CheckInput in) {
        boolean failed = in.messages().stream()
                .anyMatch(m -> TrustedResults.dmarc(m.envelope(), in.rules().timing())
                        .filter("fail"::equals)
                        .isPresent());
        return failed ? "fail" : "not_failed";
    }
}
