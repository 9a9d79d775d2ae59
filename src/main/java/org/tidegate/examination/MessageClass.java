package org.tidegate.examination;

import org.tidegate.examination.checks.Photos;
import org.tidegate.finding.FileProblem;
import org.tidegate.finding.Findings;
import org.tidegate.message.Nature;

/** What a message is before anything is matched: only submissions join others. */
public enum MessageClass {
    /** Automatic, bounced or list mail. */
    NOT_A_SUBMISSION,
    /** A person writes, but sends neither a photo nor a test time. */
    CORRESPONDENCE,
    SUBMISSION;

    public static MessageClass of(Findings findings) {
        if (findings.envelope().nature() != Nature.PERSONAL) {
            return NOT_A_SUBMISSION;
        }
        boolean photo = !Photos.of(findings).all().isEmpty();
        boolean time = findings.readings().get(0).testTime().isPresent();
        boolean file = findings.fileProblems().stream()
                .anyMatch(p -> p.kind() == FileProblem.Kind.UNSUPPORTED || p.kind() == FileProblem.Kind.UNSAFE);
        return photo || time || file ? SUBMISSION : CORRESPONDENCE;
    }
}
