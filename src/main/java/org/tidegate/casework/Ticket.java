package org.tidegate.casework;

import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;

/**
 * Which state of a submission a form was made from.
 *
 * @param version {@link Submission#version} as it was shown
 */
public record Ticket(SubmissionId id, int version) {

    public static Ticket of(Submission shown) {
        return new Ticket(shown.id(), shown.version());
    }
}
