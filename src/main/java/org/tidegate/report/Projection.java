package org.tidegate.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * How the queue is worked off by so many people, each piece taking the mean time: a discrete-event run without chance, in the
 * queue's own order.
 *
 * @param done each piece with the time of its answer, in the order of answers; those still waiting at the end are not in it
 * @param waiting pieces that are not taken up before the run ends
 * @param clear when for the first time nothing waits and nobody is at work; empty where that does not happen in time
 */
record Projection(List<Done> done, List<Piece> waiting, Optional<Instant> clear) {

    /** @param answer when it is answered */
    record Done(Piece piece, Instant answer) {}

    /**
     * @param pieces those that wait and those expected, in any order
     * @param end no piece is taken up at this time or later
     */
    static Projection run(List<Piece> pieces, int people, Duration handling, Instant now, Instant end) {
        List<Piece> coming = new ArrayList<>(pieces);
        coming.sort(Comparator.comparing(Piece::arrived).thenComparing(Piece.ORDER));
        PriorityQueue<Piece> queue = new PriorityQueue<>(Piece.ORDER);
        PriorityQueue<Instant> free = new PriorityQueue<>(Collections.nCopies(Math.max(1, people), now));
        List<Done> done = new ArrayList<>();
        Optional<Instant> clear = Optional.empty();
        int next = 0;
        while (people > 0 && (next < coming.size() || !queue.isEmpty())) {
            Instant at = free.remove();
            next = admit(coming, next, at, queue);
            if (queue.isEmpty()) {
                if (clear.isEmpty()) {
                    clear = Optional.of(lastAnswer(done, now));
                }
                if (next == coming.size()) {
                    break;
                }
                at = coming.get(next).arrived();
                next = admit(coming, next, at, queue);
            }
            if (!at.isBefore(end)) {
                break;
            }
            Instant answer = at.plus(handling);
            done.add(new Done(queue.remove(), answer));
            free.add(answer);
        }
        queue.addAll(coming.subList(next, coming.size()));
        if (queue.isEmpty() && clear.isEmpty()) {
            clear = Optional.of(lastAnswer(done, now));
        }
        return new Projection(List.copyOf(done), List.copyOf(queue), clear);
    }

    private static int admit(List<Piece> coming, int next, Instant at, PriorityQueue<Piece> queue) {
        int i = next;
        while (i < coming.size() && !coming.get(i).arrived().isAfter(at)) {
            queue.add(coming.get(i));
            i++;
        }
        return i;
    }

    private static Instant lastAnswer(List<Done> done, Instant now) {
        return done.stream().map(Done::answer).max(Instant::compareTo).orElse(now);
    }

    /** Pieces whose promise breaks, answered too late or not before the end; those whose promise was broken before are not in it. */
    long broken(Instant now, Instant end) {
        long late = done.stream()
                .filter(d -> !d.piece().brokenBy(now) && d.piece().brokenBy(d.answer()))
                .count();
        return late
                + waiting.stream()
                        .filter(p -> !p.brokenBy(now) && p.brokenBy(end))
                        .count();
    }
}
