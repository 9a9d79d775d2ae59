package org.tidegate.casework;

import java.util.List;
import java.util.Map;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.store.Observation;
import org.tidegate.store.Tx;
import org.tidegate.work.Submission;
import org.tidegate.work.User;

/** The observer's record of a test, as people write it down here; what it may change is assessed again. */
public final class Observing {

    static final int LONGEST_MARK = 12;

    private final Acting acting;

    Observing(Acting acting) {
        this.acting = acting;
    }

    /** What became of a record. */
    public sealed interface Entry {
        /** @param assessedAgain how many open submissions will be assessed anew */
        record Made(int assessedAgain) implements Entry {}

        record Forbidden(String words) implements Entry {}

        record Refused(String words) implements Entry {}
    }

    /** Stands over the book from now on, whatever is imported later. */
    public Entry record(User who, Observation observation) {
        if (!acting.rights().may(who, Permission.TRIAGE)) {
            return new Entry.Forbidden(Acting.forbidden(who, Permission.TRIAGE).words());
        }
        return acting.inTurn(tx -> record(tx, who, observation));
    }

    private Entry record(Tx tx, User who, Observation o) {
        if (acting.reader().test(tx, o.test()).isEmpty()) {
            return new Entry.Refused("The book has no test " + o.test() + ".");
        }
        if (o.timerStart().filter(t -> t.toInstant().isAfter(acting.now())).isPresent()) {
            return new Entry.Refused("A timer that is not started yet is no record.");
        }
        if (o.mark().filter(m -> m.isBlank() || m.length() > LONGEST_MARK).isPresent()) {
            return new Entry.Refused("A mark has up to " + LONGEST_MARK + " characters.");
        }
        tx.observations().append(o, who.id(), acting.now());
        tx.record("observed", who.id(), List.of(), Map.of("test", o.test().toString()));
        return new Entry.Made(Registering.assessAgain(tx, s -> mayChange(s, o)));
    }

    /** Its own test's, and those of which it is not sure for which test they are. */
    private static boolean mayChange(Submission s, Observation o) {
        return s.test().isEmpty() || s.test().get().equals(o.test().toString());
    }
}
