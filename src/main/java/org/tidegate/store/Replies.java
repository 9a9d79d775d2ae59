package org.tidegate.store;

import java.util.Optional;
import org.tidegate.store.CaseKeys.Scope;
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
                "INSERT INTO suggested_replies (submission, assessment, sealed) VALUES (?, ?, ?)",
                reply.submission().value(),
                reply.assessment(),
                tx.caseKeys()
                        .seal(
                                Scope.CASE,
                                reply.submission().value(),
                                place(reply.assessment()),
                                StoredJson.write(reply)));
    }

    public Optional<SuggestedReply> suggested(SubmissionId id, int assessment) {
        return tx.first(
                        "SELECT sealed FROM suggested_replies WHERE submission = ? AND assessment = ?",
                        r -> r.bytes("sealed"),
                        id.value(),
                        assessment)
                .flatMap(bytes -> tx.caseKeys().open(Scope.CASE, id.value(), place(assessment), bytes))
                .map(json -> StoredJson.read(json, SuggestedReply.class));
    }

    private static String place(int assessment) {
        return "suggested reply " + assessment;
    }
}
