package org.tidegate.store;

import java.time.Instant;
import java.util.List;
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
 * @param shown paths of the pictures that are for the submission from which it is looked at; all of them where empty
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
        Optional<Instant> inspected,
        Optional<List<String>> shown) {

    /** The message itself, whoever its pictures are for. */
    public StoredMessage whole() {
        return showing(Optional.empty());
    }

    /** The same message as it is looked at from a submission that has only these pictures of it. */
    public StoredMessage showing(Optional<List<String>> pictures) {
        return new StoredMessage(
                id,
                wrappedKey,
                wrappedSalt,
                blob,
                saltedHash,
                size,
                taken,
                delivered,
                submission,
                findings,
                inspected,
                pictures);
    }

    /** Whether a picture of this path is for the submission from which the message is looked at. */
    public boolean shows(String path) {
        return shown.map(s -> s.contains(path)).orElse(true);
    }
}
