package org.tidegate.casework;

import java.util.List;
import java.util.Optional;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.work.MessageId;
import org.tidegate.work.SubmissionId;

/**
 * The messages that make a submission, and what of them is for it.
 *
 * @param ids in the order of taking, at least one
 * @param part the share of the first one that is for it; empty where it has what is not another test's
 */
record Members(List<MessageId> ids, Optional<Part> part) {

    Members {
        ids = List.copyOf(ids);
    }

    SubmissionId submission() {
        return part.map(Part::submission).orElseGet(() -> SubmissionId.startedBy(ids.get(0)));
    }

    MessageId first() {
        return ids.get(0);
    }

    /** As it was before the last message came; there are several. */
    Members before() {
        return new Members(ids.subList(0, ids.size() - 1), part);
    }

    Optional<Part> share(MessageId id) {
        return part.filter(p -> p.message().equals(id));
    }
}
