package org.tidegate.report;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tidegate.casework.QueueRow;
import org.tidegate.work.Lane;
import org.tidegate.work.SubmissionId;

/**
 * A piece of work in the projection.
 *
 * @param id empty for one that is only expected to arrive
 * @param rank its lane, the first is taken up first
 * @param promised by when the answer is promised, or a correction must be asked for
 * @param neededBy embarkation
 */
record Piece(Optional<SubmissionId> id, int rank, Instant arrived, Instant promised, Optional<Instant> neededBy) {

    private static final List<Lane> LANES = List.of(Lane.values());

    private static final int REST = 1 + LANES.indexOf(Lane.REST);

    /** As the queue is taken up (DESIGN 10): by lane, then by what presses. */
    static final Comparator<Piece> ORDER = Comparator.comparingInt(Piece::rank)
            .thenComparing(Piece::promised)
            .thenComparing(Piece::arrived)
            .thenComparing(p -> p.id().map(SubmissionId::value).orElse(Long.MAX_VALUE));

    static Piece of(QueueRow row) {
        int rank = row.urgent() ? 0 : 1 + LANES.indexOf(row.lane());
        Optional<Instant> neededBy =
                row.test().flatMap(t -> t.appointment().neededBy()).map(t -> t.toInstant());
        return new Piece(Optional.of(row.id()), rank, row.arrived(), row.due(), neededBy);
    }

    /** One that nobody knows of yet: it stands where most do, among what is to be answered. */
    static Piece expected(Instant arrival, Instant promised) {
        return new Piece(Optional.empty(), REST, arrival, promised, Optional.empty());
    }

    /** Whether an answer at this time breaks what was promised. */
    boolean brokenBy(Instant answer) {
        return answer.isAfter(promised) || neededBy.filter(answer::isAfter).isPresent();
    }
}
