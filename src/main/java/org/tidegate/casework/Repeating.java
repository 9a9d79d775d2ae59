package org.tidegate.casework;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;
import org.tidegate.booking.TestRecord.Observed;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.store.Observation;
import org.tidegate.store.Repeat;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.User;

/** Recording that a person does the test again on a second kit: a test of its own, with its own timer, windows and mark. */
public final class Repeating {

    private static final int LAST = 9;
    private static final int LONGEST_NAME = 60;

    private final Store store;
    private final Acting acting;

    Repeating(Store store, Acting acting) {
        this.store = store;
        this.acting = acting;
    }

    /** What became of a record. */
    public sealed interface Outcome {
        /** @param test the new attempt */
        record Made(TestKey test) implements Outcome {}

        record Forbidden(String words) implements Outcome {}

        /** @param code why, stable: {@code no-such-test} and so on */
        record Refused(String code, String words) implements Outcome {}
    }

    /**
     * What the observer writes down.
     *
     * @param after the attempt that is repeated
     * @param timerStart when the timer of the repeat was started
     * @param mark four characters to be written on the second cassette
     */
    public record Note(
            TestKey after,
            String kit,
            Optional<String> lot,
            OffsetDateTime timerStart,
            Observed observed,
            Optional<String> mark) {}

    /** Every attempt of an appointment, the first one first; empty where the book has none. */
    public List<TestRecord> attempts(String ref) {
        return store.read(tx -> acting.reader().attempts(tx, ref));
    }

    /** From now on the next message of the person is about the repeat; open submissions that it may change are assessed anew. */
    public Outcome record(User who, Note note) {
        if (!acting.rights().may(who, Permission.TRIAGE)) {
            return new Outcome.Forbidden(
                    Acting.forbidden(who, Permission.TRIAGE).words());
        }
        return acting.inTurn(tx -> refused(tx, note).orElseGet(() -> made(tx, who, note)));
    }

    private Outcome made(Tx tx, User who, Note note) {
        TestKey next = next(note);
        tx.repeats().add(new Repeat(next, note.kit(), note.lot()), who.id(), acting.now());
        tx.observations()
                .append(
                        new Observation(next, Optional.of(note.timerStart()), note.observed(), note.mark()),
                        who.id(),
                        acting.now());
        tx.record("repeat-recorded", who.id(), List.of(), Map.of("test", next.toString()));
        Registering.assessAgain(tx, s -> s.test().isEmpty() || s.test().get().startsWith(next.ref()));
        return new Outcome.Made(next);
    }

    private Optional<Outcome> refused(Tx tx, Note note) {
        Optional<TestRecord> before = acting.reader().test(tx, note.after());
        if (before.isEmpty()) {
            return refusal("no-such-test", "The book has no test " + note.after() + ".");
        }
        if (note.after().attempt() >= LAST) {
            return refusal("too-many", "There are " + LAST + " attempts already.");
        }
        if (acting.reader().test(tx, next(note)).isPresent()) {
            return refusal("recorded", next(note) + " is recorded already: look at it before you record another.");
        }
        return unfitName(note)
                .or(() -> unfitTime(note, before.get()))
                .or(() -> note.mark().isPresent()
                                && note.mark().equals(before.get().mark())
                        ? refusal("same-mark", "The mark is the first cassette's: the repeat needs one of its own.")
                        : Optional.empty());
    }

    private static Optional<Outcome> unfitName(Note note) {
        if (note.kit().isBlank() || note.kit().length() > LONGEST_NAME) {
            return refusal("kit", "Which kit? Its name has up to " + LONGEST_NAME + " characters.");
        }
        if (note.lot().filter(l -> l.length() > LONGEST_NAME).isPresent()) {
            return refusal("lot", "A lot has up to " + LONGEST_NAME + " characters.");
        }
        return note.mark().filter(m -> m.length() > Observing.LONGEST_MARK).isPresent()
                ? refusal("mark", "A mark has up to " + Observing.LONGEST_MARK + " characters.")
                : Optional.empty();
    }

    private Optional<Outcome> unfitTime(Note note, TestRecord before) {
        if (note.timerStart().toInstant().isAfter(acting.now())) {
            return refusal("time", "A timer that is not started yet is no record.");
        }
        OffsetDateTime earlier = before.timerStart().orElse(before.appointment().slotStart());
        return note.timerStart().isAfter(earlier)
                ? Optional.empty()
                : refusal("time", "The repeat begins after the test that it repeats.");
    }

    private static TestKey next(Note note) {
        return new TestKey(note.after().ref(), note.after().attempt() + 1);
    }

    private static Optional<Outcome> refusal(String code, String words) {
        return Optional.of(new Outcome.Refused(code, words));
    }
}
