package org.tidegate.store;

import java.time.Instant;
import java.util.Optional;
import org.tidegate.work.MessageId;
import org.tidegate.work.SubmissionId;

/**
 * A message as recorded.
 *
 * @param wrappedKey empty where the message is forgotten
 * @param wrappedSalt empty where the message is forgotten
 * @param findings sealed; empty where not inspected yet, or forgotten
 * @param inspected when it was inspected
 */
public record StoredMessage(
        MessageId id,
        Optional<byte[]> wrappedKey,
        Optional<byte[]> wrappedSalt,
        String blob,
        String saltedHash,
        long size,
        Instant taken,
        Optional<Instant> delivered,
        Optional<SubmissionId> submission,
        Optional<byte[]> findings,
        Optional<Instant> inspected) {}
