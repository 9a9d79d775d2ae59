package org.tidegate.report;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tidegate.work.OutboxState;
import org.tidegate.work.PolicyAct;
import org.tidegate.work.SubmissionId;

/**
 * What a shift that begins has to know. Names nobody: submissions stand here by number and reference.
 *
 * @param from when the shift before ended, inclusive
 * @param until the moment at which it is told, exclusive; time left counts from here
 * @param messages how many came in
 * @param aside how many submissions of these are none: machines' mail
 * @param unexamined how many pieces of examination are still to be done
 * @param cases what is open, what presses most first
 * @param acts what went out by itself, in order
 * @param calls what the on-call person was told, in order
 * @param troubled letters of which nobody can be sure, or that did not go
 */
public record Handover(
        Instant from,
        Instant until,
        int messages,
        int aside,
        long unexamined,
        List<Case> cases,
        List<Act> acts,
        List<Call> calls,
        List<Troubled> troubled) {

    public Handover {
        cases = List.copyOf(cases);
        acts = List.copyOf(acts);
        calls = List.copyOf(calls);
        troubled = List.copyOf(troubled);
    }

    /** How an open submission stands, in the order in which a shift takes them up. */
    public enum Standing {
        /** Words of distress or urgent symptoms. */
        URGENT,
        /** A correction still counts if it is asked for now. */
        SAVABLE,
        /** What was asked for may still come. */
        WAITING,
        /** Held; no correction was to be asked for, a person decides. */
        TO_DECIDE,
        /** Everything adds up; a trained reader reads the cassette. */
        TO_READ,
        /** A correction would come too late. */
        LOST;

        /** The stable form: {@code to-decide}. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * An open submission.
     *
     * @param test reference of the test; empty where none was found for sure
     * @param clinic code of the booked clinic
     * @param codes what holds it
     * @param until until when a correction counts, or counted, or we wait; empty where there is no such time
     * @param due when an answer is due
     * @param act what the policy did last about it
     */
    public record Case(
            Standing standing,
            SubmissionId id,
            Optional<String> test,
            Optional<String> clinic,
            List<String> codes,
            Instant arrived,
            Optional<Instant> until,
            Instant due,
            Optional<Instant> neededBy,
            Optional<PolicyAct> act) {}

    /**
     * Something that went out by itself.
     *
     * @param letter what became of the letter
     */
    public record Act(PolicyAct act, Optional<String> test, OutboxState letter) {}

    /** @param why a discrepancy's code, or that it is needed before the shift */
    public record Call(SubmissionId id, Instant when, String why, OutboxState letter) {}

    /** @param kind what kind of letter, in its stable form */
    public record Troubled(long letter, Optional<SubmissionId> id, String kind, OutboxState state) {}

    public List<Case> of(Standing standing) {
        return cases.stream().filter(c -> c.standing() == standing).toList();
    }
}
