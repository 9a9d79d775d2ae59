package org.tidegate.casework;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidegate.casework.Acting.Case;
import org.tidegate.casework.LetterWriter.Written;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.User;

/** Tells people honestly that their answer comes later than promised. One told time at a time; never to whom no machine may write. */
public final class NewTimes {

    private static final Set<SubmissionState> WAITING_FOR_US =
            EnumSet.of(SubmissionState.HELD, SubmissionState.TO_READ, SubmissionState.READ);

    private static final Duration FURTHEST = Duration.ofHours(24);

    private final Acting acting;
    private final LetterDesk letters;

    NewTimes(Acting acting, LetterDesk letters) {
        this.acting = acting;
        this.letters = letters;
    }

    /**
     * A letter before it goes.
     *
     * @param to the booked address
     */
    public record Draft(Ticket ticket, String who, String to, Instant newTime, String text) {}

    /** What would go to each of these now; those who are not to be written to are left out. */
    public List<Draft> drafts(Map<SubmissionId, Instant> times) {
        return acting.inTurn(tx -> times.entrySet().stream()
                .flatMap(e -> acting.seen(tx, e.getKey()).stream()
                        .filter(c -> refused(c, e.getValue()).isEmpty())
                        .map(c -> draft(c, e.getValue())))
                .toList());
    }

    private Draft draft(Case c, Instant time) {
        Matter matter = acting.reader().matter(c.tx(), c.submission(), c.assessment());
        return new Draft(
                Ticket.of(c.submission()),
                CaseReader.who(matter.test(), Optional.of(matter.first())),
                matter.bookedAddress().orElseThrow(),
                time,
                letters.writer().newTime(matter, time, c.now()).text());
    }

    /** Puts the letters into the outbox, where they can be called back for a while; one that fails leaves the others. */
    public Map<Ticket, ActionResult> tell(User who, Map<Ticket, Instant> times) {
        Map<Ticket, ActionResult> all = new LinkedHashMap<>();
        times.forEach((ticket, time) -> all.put(
                ticket,
                acting.on(ticket, who, Permission.TRIAGE, c -> refused(c, time).orElseGet(() -> tell(c, time)))));
        return all;
    }

    private Optional<ActionResult> refused(Case c, Instant time) {
        if (!WAITING_FOR_US.contains(c.submission().state())) {
            return refusal("state", c.id() + " does not wait for us any more.");
        }
        if (c.submission().urgent()) {
            return refusal("urgent", c.id() + " bears urgent words: call, do not put off.");
        }
        if (!time.isAfter(c.now()) || time.isAfter(c.now().plus(FURTHEST))) {
            return refusal("too-late", "A new time lies between now and a day from now.");
        }
        if (c.tx().outbox().of(c.id()).stream().anyMatch(l -> stands(l, c.now()))) {
            return refusal("told", c.id() + " was told a time that is not over yet.");
        }
        return letters.refused(c, LetterKind.NEW_TIME);
    }

    /** A new time that was told, or is about to be, and that has not passed. */
    private static boolean stands(OutboxLetter l, Instant now) {
        return l.kind() == LetterKind.NEW_TIME
                && l.state() != OutboxState.RECALLED
                && !l.state().failed()
                && l.notAfter().filter(now::isBefore).isPresent();
    }

    private static Optional<ActionResult> refusal(String code, String words) {
        return Optional.of(new ActionResult.Refused(code, words));
    }

    private ActionResult tell(Case c, Instant time) {
        Matter matter = acting.reader().matter(c.tx(), c.submission(), c.assessment());
        Written written = letters.writer().newTime(matter, time, c.now());
        long letter = letters.put(
                c,
                LetterKind.NEW_TIME,
                matter.bookedAddress().orElseThrow(),
                written,
                "told-new-time",
                Optional.of(time));
        return new ActionResult.Done(
                c.submission(), Optional.of(letter), "The letter goes out soon; until then it can be called back.");
    }
}
