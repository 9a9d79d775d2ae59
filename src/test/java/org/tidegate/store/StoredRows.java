package org.tidegate.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/** The least that a message and its submission need, for tests of what becomes of them. */
final class StoredRows {

    private StoredRows() {}

    static MessageId message(Tx tx, String mark, Instant taken) {
        return tx.messages()
                .insert(new NewMessage(
                        mark,
                        new byte[] {1},
                        new byte[] {2},
                        "blob-" + mark,
                        "hash-" + mark,
                        10,
                        taken,
                        Optional.empty()))
                .orElseThrow();
    }

    static void submission(Tx tx, SubmissionId id, MessageId message, SubmissionState state, Instant arrived) {
        tx.submissions()
                .save(new Submission(
                        id,
                        state,
                        List.of(message),
                        Optional.empty(),
                        false,
                        arrived,
                        arrived,
                        Optional.empty(),
                        Optional.empty(),
                        1,
                        1));
    }
}
