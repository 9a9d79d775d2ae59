package org.tidegate.store;

import java.time.Instant;
import java.util.Optional;
import org.tidegate.store.CaseKeys.Scope;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** A letter about to go into the outbox; the fields as in {@link org.tidegate.work.OutboxLetter}. */
public record NewLetter(
        Optional<SubmissionId> submission,
        LetterKind kind,
        LetterText text,
        String addressMark,
        String messageId,
        String reasonCode,
        UserId who,
        Instant made,
        Instant notBefore,
        Optional<Instant> notAfter) {

    private static final long DAY_SECONDS = 86_400;

    /** With what it is forgotten. */
    Scope scope() {
        if (submission.isEmpty()) {
            return Scope.SERVICE;
        }
        return kind.result() ? Scope.RESULT : Scope.CASE;
    }

    long owner() {
        return submission.map(SubmissionId::value).orElse(made.getEpochSecond() / DAY_SECONDS);
    }
}
