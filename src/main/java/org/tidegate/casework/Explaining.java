package org.tidegate.casework;

import java.time.Instant;
import java.util.Optional;
import org.tidegate.casework.Acting.Case;
import org.tidegate.casework.LetterWriter.Written;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.work.Enclosed;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxState;
import org.tidegate.work.User;

/**
 * Shows a participant who doubts it how the times were judged: the page with every clock goes out with a letter of its own. It changes
 * nothing about the submission, so that it can be told in any state, months later too.
 */
public final class Explaining {

    private final Acting acting;
    private final LetterDesk letters;
    private final Drawings drawings;

    Explaining(Acting acting, LetterDesk letters, Drawings drawings) {
        this.acting = acting;
        this.letters = letters;
        this.drawings = drawings;
    }

    /** Puts the letter into the outbox, to the booked address only: it tells when and where somebody was tested. */
    public ActionResult send(User who, Ticket ticket) {
        return acting.on(
                ticket,
                who,
                Permission.TRIAGE,
                c -> onItsWay(c)
                        .or(() -> letters.refused(c, LetterKind.TIMES))
                        .orElseGet(() -> drawings.enclosure(c.tx(), c.submission(), c.assessment())
                                .map(page -> send(c, page))
                                .orElseGet(() -> new ActionResult.Refused(
                                        "no-times", "There are no verdicts on time in " + c.id() + " to be shown."))));
    }

    private static Optional<ActionResult> onItsWay(Case c) {
        return c.tx().outbox().of(c.id()).stream()
                .filter(l -> l.kind() == LetterKind.TIMES)
                .filter(l -> l.state() == OutboxState.WAITING || l.state() == OutboxState.ATTEMPTING)
                .findAny()
                .map(l -> new ActionResult.Refused("on-its-way", "The page is on its way already."));
    }

    private ActionResult send(Case c, byte[] page) {
        Matter matter = acting.reader().matter(c.tx(), c.submission(), c.assessment());
        Written written = letters.writer().plain(LetterKind.TIMES, matter, Optional.<Instant>empty());
        Enclosed file = new Enclosed(c.id() + "-times.pdf", "application/pdf", page);
        long number = letters.put(
                c,
                LetterKind.TIMES,
                matter.bookedAddress().orElseThrow(),
                written.with(file),
                "asked-about-times",
                Optional.empty());
        return new ActionResult.Done(
                c.submission(), Optional.of(number), "The page goes out soon; until then it can be called back.");
    }
}
