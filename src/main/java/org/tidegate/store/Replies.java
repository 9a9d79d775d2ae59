package org.tidegate.store;

import java.util.Optional;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SuggestedReply;

/** Suggested replies, one an assessment at most. */
public final class Replies {

    private final Tx tx;

    Replies(Tx tx) {
        this.tx = tx;
    }

    public void suggest(SuggestedReply reply) {
        tx.update(
                "INSERT INTO suggested_replies (submission, assessment, reply) VALUES (?, ?, ?)",
                reply.submission().value(),
                reply.assessment(),
                StoredJson.write(reply));
    }

    public Optional<SuggestedReply> suggested(SubmissionId id, int assessment) {
        return tx.first(
                "SELECT reply FROM suggested_replies WHERE submission = ? AND assessment = ?",
                r -> StoredJson.read(r.text("reply"), SuggestedReply.class),
                id.value(),
                assessment);
    }
}
