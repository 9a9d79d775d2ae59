package org.tidegate.console;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tidegate.casework.QueueRow;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;

/**
 * The queue as the page shows it: the rows of one page of those that fit the query, and the counts beside them.
 *
 * @param lanes the rows of this page by lane
 * @param laneChoices every lane that something waits in, and the choice of all
 * @param kindChoices every discrepancy that something waits for, the most frequent first
 * @param newest milliseconds since 1970: what came to stand later is news to this page
 */
record QueuePage(
        QueueQuery query,
        int waiting,
        List<LaneView> lanes,
        List<Choice> laneChoices,
        List<Choice> kindChoices,
        int pages,
        long newest,
        String asOf) {

    static final int ROWS = 50;

    /** A lane with its rows; {@code count} is of all pages. */
    record LaneView(String code, long count, List<QueueLine> rows) {}

    /** A filter with what it would leave. */
    record Choice(String label, long count, String link, boolean chosen) {}

    static QueuePage of(List<QueueRow> all, QueueQuery query, Instant now, Words words) {
        List<QueueRow> found =
                all.stream().filter(r -> query.found(r, words.zone())).toList();
        List<QueueRow> fit = found.stream()
                .filter(r -> query.inLane(r) && query.ofKind(r))
                .sorted(Comparator.comparing(LaneKey::of))
                .toList();
        int pages = Math.max(1, (fit.size() + ROWS - 1) / ROWS);
        QueueQuery shown = new QueueQuery(query.lane(), query.kind(), query.words(), Math.min(pages, query.page()));
        return new QueuePage(
                shown,
                all.size(),
                lanes(fit, shown.page(), now, words),
                laneChoices(found, shown, words),
                kindChoices(found, shown, words),
                pages,
                now.toEpochMilli(),
                words.clock(now));
    }

    private static List<QueueRow> rowsOf(List<QueueRow> fit, int page) {
        int from = Math.min(fit.size(), (page - 1) * ROWS);
        return fit.subList(from, Math.min(fit.size(), from + ROWS));
    }

    private static List<LaneView> lanes(List<QueueRow> fit, int page, Instant now, Words words) {
        Map<LaneKey, Long> counts = count(fit, LaneKey::of);
        Map<LaneKey, List<QueueLine>> byLane = new EnumMap<>(LaneKey.class);
        rowsOf(fit, page)
                .forEach(r -> byLane.computeIfAbsent(LaneKey.of(r), k -> new ArrayList<>())
                        .add(QueueLine.of(r, now, words)));
        return byLane.entrySet().stream()
                .map(e -> new LaneView(e.getKey().code(), counts.getOrDefault(e.getKey(), 0L), e.getValue()))
                .toList();
    }

    private static List<Choice> laneChoices(List<QueueRow> found, QueueQuery query, Words words) {
        List<QueueRow> rows = found.stream().filter(query::ofKind).toList();
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(
                words.say("queue.all"),
                rows.size(),
                query.linkToLane(Optional.empty()),
                query.lane().isEmpty()));
        count(rows, LaneKey::of)
                .forEach((lane, count) -> choices.add(new Choice(
                        words.say("lane." + lane.code()),
                        count,
                        query.linkToLane(Optional.of(lane)),
                        query.lane().equals(Optional.of(lane)))));
        return choices;
    }

    private static List<Choice> kindChoices(List<QueueRow> found, QueueQuery query, Words words) {
        List<Discrepancy> holds = found.stream()
                .filter(query::inLane)
                .flatMap(r -> r.holds().stream())
                .toList();
        return count(holds, Discrepancy::code).entrySet().stream()
                .sorted(Map.Entry.<DiscrepancyCode, Long>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(e -> kindChoice(e.getKey(), e.getValue(), query, words))
                .toList();
    }

    /** Choosing the chosen one again takes the choice away. */
    private static Choice kindChoice(DiscrepancyCode kind, long count, QueueQuery query, Words words) {
        boolean chosen = query.kind().equals(Optional.of(kind));
        Optional<DiscrepancyCode> next = chosen ? Optional.empty() : Optional.of(kind);
        return new Choice(words.say("code." + kind.code()), count, query.linkToKind(next), chosen);
    }

    private static <T, K extends Enum<K>> Map<K, Long> count(List<T> all, Function<T, K> by) {
        return all.stream().collect(Collectors.groupingBy(by, TreeMap::new, Collectors.counting()));
    }
}
