package org.tidegate.casework;

import java.util.Optional;
import java.util.TreeSet;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;

/**
 * A submission while a fold is under way.
 *
 * @param stored as it stood before; empty for a new one
 * @param messages in the order of taking; changed by the fold
 */
record Draft(SubmissionId id, Optional<Submission> stored, TreeSet<MessageId> messages) {

    static Draft of(Submission stored) {
        return new Draft(stored.id(), Optional.of(stored), new TreeSet<>(stored.messages()));
    }

    static Draft startedBy(MessageId first) {
        return new Draft(SubmissionId.startedBy(first), Optional.empty(), new TreeSet<>());
    }

    /** A person acted on it: its messages stay where they are. */
    boolean pinned() {
        return stored.isPresent() && !stored.get().state().movedByAssessment();
    }

    /** Whether a later message may join: until it is read. */
    boolean joinable() {
        return stored.isEmpty()
                || stored.get().state().movedByAssessment()
                || stored.get().state().takesMore();
    }
}
