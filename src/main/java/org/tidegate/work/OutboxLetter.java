package org.tidegate.work;

import java.time.Instant;
import java.util.Optional;

/**
 * One letter in the outbox.
 *
 * @param submission what it is about; empty for mail among ourselves
 * @param text empty where it is forgotten
 * @param addressMark keyed mark of the address, by which letters to one address are counted
 * @param messageId ours, without angle brackets, the same at every try
 * @param reasonCode why it was written: a code of the rules, or what the daemon saw
 * @param who wrote or released it; {@link UserId#DAEMON} where it went out by itself
 * @param notBefore until then it can be called back
 * @param notAfter it must not be sent any more after this
 * @param attempted when sending began last
 * @param finished when it came to its end
 * @param outcome what the server said, without addresses
 */
public record OutboxLetter(
        long id,
        Optional<SubmissionId> submission,
        LetterKind kind,
        OutboxState state,
        Optional<LetterText> text,
        String addressMark,
        String messageId,
        String reasonCode,
        UserId who,
        Instant made,
        Instant notBefore,
        Optional<Instant> notAfter,
        Optional<Instant> attempted,
        Optional<Instant> finished,
        int tries,
        Optional<String> outcome,
        int version) {}
