package org.tidegate.work;

import java.time.Instant;
import java.util.Optional;

/**
 * What a trained reader saw on the cassette, and wrote down from it.
 *
 * @param number from 1, within the submission; the newest counts
 * @param lot lot number printed on it, where legible
 * @param mark the observer's mark, where legible
 * @param marked false where nothing at all is written on the cassette
 */
public record Reading(
        SubmissionId submission,
        int number,
        Line control,
        Line test,
        Optional<String> lot,
        Optional<String> mark,
        boolean marked,
        UserId who,
        Instant when) {

    public enum Line {
        PRESENT,
        ABSENT
    }

    public enum Outcome {
        NEGATIVE,
        POSITIVE,
        /** No control line: says neither yes nor no. */
        INVALID
    }

    /** Without a control line nothing is concluded, whatever the test line shows. */
    public Outcome outcome() {
        if (control == Line.ABSENT) {
            return Outcome.INVALID;
        }
        return test == Line.PRESENT ? Outcome.POSITIVE : Outcome.NEGATIVE;
    }
}
