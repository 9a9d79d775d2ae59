package org.tidegate.examination;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.tidegate.booking.TestKey;
import org.tidegate.examination.linkage.LinkageResult;
import org.tidegate.finding.Findings;

/** Decides which submission a new message belongs to: the same thread, or the same test. */
public final class Joining {

    private Joining() {}

    /**
     * A submission as far as joining is concerned.
     *
     * @param messages its messages in order of taking
     * @param test its matched test
     */
    public record Candidate(List<Findings> messages, Optional<TestKey> test) {}

    /**
     * The index of the submission that the message joins; empty where it starts its own. A match with another test outweighs
     * the thread: people answer in old threads.
     */
    public static OptionalInt place(Findings message, LinkageResult alone, List<Candidate> submissions) {
        if (MessageClass.of(message) != MessageClass.SUBMISSION) {
            return OptionalInt.empty();
        }
        OptionalInt sameTest =
                alone.test().isPresent() ? find(submissions, s -> s.test().equals(alone.test())) : OptionalInt.empty();
        if (sameTest.isPresent()) {
            return sameTest;
        }
        return find(
                submissions,
                s -> threaded(message, s) && (alone.test().isEmpty() || s.test().isEmpty()));
    }

    private static boolean threaded(Findings message, Candidate submission) {
        return submission.messages().stream()
                .flatMap(m -> m.envelope().messageId().stream())
                .anyMatch(message.envelope().references()::contains);
    }

    private static OptionalInt find(List<Candidate> submissions, Predicate<Candidate> wanted) {
        for (int i = submissions.size() - 1; i >= 0; i--) {
            if (wanted.test(submissions.get(i))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }
}
