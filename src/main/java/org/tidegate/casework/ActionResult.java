package org.tidegate.casework;

import java.util.Optional;
import org.tidegate.work.Claim;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;

/** What became of a person's action. Anything but {@link Done} changed nothing at all. */
public sealed interface ActionResult {

    /** For the person who acted, plain English. */
    String words();

    /**
     * It is done, and in the ledger.
     *
     * @param submission as it stands now
     * @param letter number in the outbox of the letter that it wrote, which can be called back for a while
     */
    record Done(Submission submission, Optional<Long> letter, String words) implements ActionResult {}

    /** The form showed an older state: someone or something changed the submission meanwhile. */
    record Stale(Submission now) implements ActionResult {
        @Override
        public String words() {
            return now.id() + " has changed since you opened it. Nothing was done. Look at it again, please.";
        }
    }

    /** Someone else has taken it up. */
    record Taken(Claim by) implements ActionResult {
        @Override
        public String words() {
            return by.who().value() + " has taken up " + by.submission() + ". Nothing was done.";
        }
    }

    /** The rules give this person no right to it. */
    record Forbidden(String words) implements ActionResult {}

    /** @param code why it cannot be done, stable: {@code too-late}, {@code no-address} and so on */
    record Refused(String code, String words) implements ActionResult {}

    record Missing(SubmissionId id) implements ActionResult {
        @Override
        public String words() {
            return "There is no submission " + id + ".";
        }
    }
}
