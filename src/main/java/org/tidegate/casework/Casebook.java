package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** What people look at: the queue and one submission, read only. */
public interface Casebook {

    /** Everything that waits for a person, in the order of DESIGN 10. */
    List<QueueRow> queue(Instant now);

    Optional<SubmissionView> submission(SubmissionId id, Instant now);

    /** The bytes of one attached picture; empty where there is none, or where it has been forgotten. */
    Optional<PictureBytes> picture(SubmissionId id, int message, String path);

    /** A cassette of the submission by itself, as PNG; empty where there is none of that number, or where it has been forgotten. */
    Optional<PictureBytes> cassette(SubmissionId id, long number);

    Optional<User> user(UserId id);

    /** Submissions by their number, {@code S-17} or {@code 17}, or by the reference of their test. */
    List<SubmissionId> find(String numberOrReference);
}
