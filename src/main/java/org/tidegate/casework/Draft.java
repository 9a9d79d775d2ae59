package org.tidegate.casework;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;

/**
 * A submission while a fold is under way.
 *
 * @param stored as it stood before; empty for a new one
 * @param part where it is a further test's share in a message
 * @param messages in the order of taking; changed by the fold
 */
record Draft(SubmissionId id, Optional<Submission> stored, Optional<Part> part, TreeSet<MessageId> messages) {

    static Draft of(Submission stored, Optional<Part> part) {
        return new Draft(stored.id(), Optional.of(stored), part, new TreeSet<>(stored.messages()));
    }

    static Draft startedBy(MessageId first) {
        return new Draft(SubmissionId.startedBy(first), Optional.empty(), Optional.empty(), new TreeSet<>());
    }

    static Draft of(Part part) {
        return new Draft(part.submission(), Optional.empty(), Optional.of(part), new TreeSet<>(Set.of(part.message())));
    }

    Members members() {
        return new Members(List.copyOf(messages), part);
    }

    /** Whether the message is a part's own share, which is where a person put it, and not in this submission as its home. */
    boolean shares(MessageId message) {
        return part.filter(p -> p.message().equals(message)).isPresent();
    }

    /** What came after the message, and may have to be placed again. */
    TreeSet<MessageId> after(MessageId message) {
        return new TreeSet<>(messages.tailSet(message, false));
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
