package org.tidegate.report;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.work.SubmissionId;

/**
 * What is to be expected of the next hours.
 *
 * @param people how many are reckoned with
 * @param waiting how many submissions wait for a person now
 * @param overdue how many of them have a broken promise already
 * @param until how far it looks
 * @param clear when for the first time nothing waits; empty where that does not happen
 * @param willBreak promises that will break besides, of those that wait and those that are expected
 * @param more how many more people would keep all of these; empty where no number of people would
 * @param waits share of new pieces that find nobody free, by Erlang C at the present rate
 * @param needed people who take up 95 % of new pieces within the promise, by Erlang C at the present rate
 * @param late those that wait and will be answered later than promised, with the expected time
 */
public record Horizon(
        Instant now,
        Pace pace,
        int people,
        int waiting,
        int overdue,
        Instant until,
        Optional<Instant> clear,
        int willBreak,
        Optional<Integer> more,
        double rate,
        double waits,
        int needed,
        List<Late> late) {

    public Horizon {
        late = List.copyOf(late);
    }

    /**
     * One that waits too long.
     *
     * @param promised by when it was promised
     * @param expected when it will be answered as things stand
     * @param honest the time to tell: the expected one with a margin, rounded up
     */
    public record Late(SubmissionId id, Instant promised, Instant expected, Instant honest) {}
}
