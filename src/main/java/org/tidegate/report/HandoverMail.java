package org.tidegate.report;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.casework.Desk;
import org.tidegate.casework.Notices;
import org.tidegate.rules.Rules;
import org.tidegate.rules.ServiceHours;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;

/** Sends the handover to the shift that begins, once a shift over all machines. */
public final class HandoverMail {

    private final Handovers handovers;
    private final Notices notices;
    private final Rules rules;
    private final Clock clock;

    public static HandoverMail of(Desk desk, Rules rules, Clock clock) {
        return new HandoverMail(new Handovers(desk.store(), desk.casebook(), rules), desk.notices(), rules, clock);
    }

    private HandoverMail(Handovers handovers, Notices notices, Rules rules, Clock clock) {
        this.handovers = handovers;
        this.notices = notices;
        this.rules = rules;
        this.clock = clock;
    }

    /** @return whether one went into the outbox */
    public boolean work() {
        Instant now = clock.instant();
        Optional<Instant> shift = ServiceHours.of(rules.hours()).at(now).map(ServiceHours.Span::from);
        return rules.hours()
                .handoverTo()
                .flatMap(to -> shift.filter(from -> !notices.writtenSince(LetterKind.HANDOVER, from))
                        .map(from -> notices.once(LetterKind.HANDOVER, from, letter(to, now))))
                .orElse(false);
    }

    /** The page tells more than mail should: here, too, nobody is named. */
    private LetterText letter(String to, Instant now) {
        String text = new HandoverText(rules).write(handovers.lastNight(now)) + "\n"
                + rules.hours().consoleAddress() + "/handover\n";
        return new LetterText(
                to, rules.texts().languageFor("en"), "Handover of the night", text, Optional.empty(), List.of());
    }
}
