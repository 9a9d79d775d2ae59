package org.tidegate.casework;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.Acting.Case;
import org.tidegate.casework.LetterWriter.Written;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.store.Store;
import org.tidegate.work.Ending;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxState;
import org.tidegate.work.Reading;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.User;

/** What trained readers do: read the cassette, release the letter, and after that amend or withdraw it. */
public final class ReadingDesk {

    private static final Set<SubmissionState> READABLE = EnumSet.of(SubmissionState.TO_READ, SubmissionState.READ);

    private final Store store;
    private final Acting acting;
    private final LetterDesk letters;

    ReadingDesk(Store store, Acting acting, LetterDesk letters) {
        this.store = store;
        this.acting = acting;
        this.letters = letters;
    }

    /**
     * What the reader saw.
     *
     * @param lot as printed on the cassette, where legible
     * @param mark as written on the cassette, where legible
     * @param marked false where nothing at all is written on it
     */
    public record Seen(
            Reading.Line control, Reading.Line test, Optional<String> lot, Optional<String> mark, boolean marked) {}

    /** Readings of a submission in their order. A reader must not see them before recording his own. */
    public List<Reading> readings(SubmissionId id) {
        return store.read(tx -> tx.readings().of(id));
    }

    /**
     * Records a reading. What was transcribed is checked against the book at once: where lot or mark differ, the submission is
     * held instead of read.
     */
    public ActionResult read(User who, Ticket ticket, Seen seen) {
        return acting.on(ticket, who, Permission.READ, c -> {
            if (!READABLE.contains(c.submission().state())) {
                return new ActionResult.Refused(
                        "state", c.id() + " is " + c.submission().state().code() + ": there is nothing to read.");
            }
            append(c, seen);
            c.move(SubmissionState.READ, "read", List.of());
            acting.assessAgain(c);
            Submission after = c.fresh();
            String words = after.state() == SubmissionState.READ
                    ? "The reading is recorded."
                    : "The reading is recorded, but what is written on the cassette does not fit the book.";
            return new ActionResult.Done(after, Optional.empty(), words);
        });
    }

    private static Reading append(Case c, Seen seen) {
        Reading reading = new Reading(
                c.id(),
                c.tx().readings().of(c.id()).size() + 1,
                seen.control(),
                seen.test(),
                seen.lot(),
                seen.mark(),
                seen.marked(),
                c.who(),
                c.now());
        c.tx().readings().append(reading);
        return reading;
    }

    /** Releases the result letter to the booked address, and closes the submission. */
    public ActionResult release(User who, Ticket ticket) {
        return acting.on(ticket, who, Permission.RELEASE, c -> {
            Optional<Reading> reading = newest(c);
            if (c.submission().state() != SubmissionState.READ || reading.isEmpty()) {
                return new ActionResult.Refused("not-read", c.id() + " has no reading to release.");
            }
            return letters.refused(c, LetterKind.RESULT).orElseGet(() -> release(c, reading.get()));
        });
    }

    private ActionResult release(Case c, Reading reading) {
        Matter matter = acting.reader().matter(c.tx(), c.submission(), c.assessment());
        Written letter = letters.writer().result(reading, matter, secondInvalid(c, reading), Optional.empty());
        long number = letters.put(
                c, LetterKind.RESULT, matter.bookedAddress().orElseThrow(), letter, "released", Optional.empty());
        end(c, Ending.Kind.RELEASED, "none");
        Submission moved = c.move(SubmissionState.CLOSED, "released", List.of());
        return new ActionResult.Done(
                moved, Optional.of(number), "The result letter goes out soon; until then it can be called back.");
    }

    /** Revises a released result: a new reading, and a letter that names the one it replaces. */
    public ActionResult amend(User who, Ticket ticket, Seen seen, String reasonCode) {
        return acting.on(ticket, who, Permission.AMEND, c -> {
            Optional<Instant> original = released(c);
            if (original.isEmpty()) {
                return notReleased(c);
            }
            return letters.refused(c, LetterKind.AMENDED).orElseGet(() -> {
                Matter matter = acting.reader().matter(c.tx(), c.submission(), c.assessment());
                Reading reading = append(c, seen);
                Written letter = letters.writer().result(reading, matter, secondInvalid(c, reading), original);
                long number = letters.put(
                        c,
                        LetterKind.AMENDED,
                        matter.bookedAddress().orElseThrow(),
                        letter,
                        reasonCode,
                        Optional.empty());
                end(c, Ending.Kind.AMENDED, reasonCode);
                Submission moved = c.move(SubmissionState.AMENDED, "amended", List.of(reasonCode));
                return new ActionResult.Done(moved, Optional.of(number), "The revised letter goes out soon.");
            });
        });
    }

    /** Takes a released result back. */
    public ActionResult withdraw(User who, Ticket ticket, String reasonCode) {
        return acting.on(ticket, who, Permission.AMEND, c -> {
            Optional<Instant> original = released(c);
            if (original.isEmpty()) {
                return notReleased(c);
            }
            return letters.refused(c, LetterKind.WITHDRAWN).orElseGet(() -> {
                Matter matter = acting.reader().matter(c.tx(), c.submission(), c.assessment());
                Written letter = letters.writer().withdrawal(matter, original.get());
                long number = letters.put(
                        c,
                        LetterKind.WITHDRAWN,
                        matter.bookedAddress().orElseThrow(),
                        letter,
                        reasonCode,
                        Optional.empty());
                end(c, Ending.Kind.WITHDRAWN, reasonCode);
                Submission moved = c.move(SubmissionState.WITHDRAWN, "withdrawn", List.of(reasonCode));
                return new ActionResult.Done(
                        moved, Optional.of(number), "The letter that takes it back goes out soon.");
            });
        });
    }

    private static ActionResult notReleased(Case c) {
        return new ActionResult.Refused("not-released", c.id() + " has no result letter that went out.");
    }

    /** When the newest result letter went out. */
    private static Optional<Instant> released(Case c) {
        return c.tx().outbox().of(c.id()).stream()
                .filter(l -> l.kind() == LetterKind.RESULT || l.kind() == LetterKind.AMENDED)
                .filter(l -> l.state() == OutboxState.SENT || l.state() == OutboxState.UNCERTAIN)
                .map(l -> l.finished().orElse(l.made()))
                .reduce((a, b) -> b);
    }

    private static void end(Case c, Ending.Kind kind, String reasonCode) {
        c.tx().endings().append(new Ending(c.id(), kind, reasonCode, c.who(), c.now()));
    }

    private static Optional<Reading> newest(Case c) {
        return c.tx().readings().of(c.id()).stream().reduce((a, b) -> b);
    }

    /** Whether the attempt before was invalid too. */
    private static boolean secondInvalid(Case c, Reading reading) {
        if (reading.outcome() != Reading.Outcome.INVALID) {
            return false;
        }
        return c.assessment().test().filter(t -> t.attempt() > 1).stream()
                .map(t -> new TestKey(t.ref(), t.attempt() - 1))
                .flatMap(before -> c.tx().submissions().ofTest(before.toString()).stream())
                .flatMap(s -> c.tx().readings().of(s.id()).stream().reduce((a, b) -> b).stream())
                .anyMatch(r -> r.outcome() == Reading.Outcome.INVALID);
    }
}
