package org.tidegate.console;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tidegate.casework.QueueRow;

/**
 * What has changed for a page that somebody is looking at. Rows on it are told anew where they stand; nothing is put between them, so
 * that nothing moves away under a finger.
 *
 * @param fresh how many rows that fit came since
 * @param link shows them
 * @param lines rows of the page that still wait
 * @param gone rows of the page that wait no longer
 */
record QueueNews(int fresh, String link, String words, List<QueueLine> lines, List<Long> gone) {

    private static final int MOST = 200;

    static QueueNews of(
            List<QueueRow> all, QueueQuery query, Instant since, List<Long> shown, Instant now, Words words) {
        Set<Long> waiting = all.stream().map(r -> r.id().value()).collect(Collectors.toSet());
        Set<Long> asked = new TreeSet<>(shown.subList(0, Math.min(MOST, shown.size())));
        int fresh = (int) all.stream()
                .filter(r -> r.since().isAfter(since) && !asked.contains(r.id().value()))
                .filter(r -> query.inLane(r) && query.ofKind(r) && query.found(r, words.zone()))
                .count();
        String time = words.clock(since);
        return new QueueNews(
                fresh,
                query.linkToPage(1),
                fresh == 0 ? words.say("queue.no-news", time) : words.say("queue.news", Integer.toString(fresh), time),
                all.stream()
                        .filter(r -> asked.contains(r.id().value()))
                        .map(r -> QueueLine.of(r, now, words))
                        .toList(),
                asked.stream().filter(id -> !waiting.contains(id)).toList());
    }
}
