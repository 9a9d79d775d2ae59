package org.tidegate.report;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tidegate.casework.Casebook;
import org.tidegate.report.Horizon.Late;
import org.tidegate.rules.Rules;
import org.tidegate.store.Store;

/** Reckons, from the pace of the last weeks and what waits now, how the next hours will go. Advice, no promise. */
public final class Outlook {

    /** How far it looks. */
    static final Duration AHEAD = Duration.ofHours(12);

    /** More people than this are not reckoned with. */
    static final int MOST_PEOPLE = 60;

    private static final double SHARE = 0.95;
    private static final Duration ROUNDED = Duration.ofMinutes(5);
    private static final Duration LEAST_MARGIN = Duration.ofMinutes(10);
    private static final int MARGIN_PARTS = 5;

    private final Store store;
    private final Casebook casebook;
    private final Rules rules;
    private final Clock clock;

    public Outlook(Store store, Casebook casebook, Rules rules, Clock clock) {
        this.store = store;
        this.casebook = casebook;
        this.rules = rules;
        this.clock = clock;
    }

    /**
     * @param people how many work the queue; a negative number counts as nobody, one that is too great as {@value #MOST_PEOPLE}
     */
    public Horizon with(int people) {
        int working = Math.max(0, Math.min(people, MOST_PEOPLE));
        Instant now = clock.instant();
        Pace pace = store.read(tx -> Pace.of(tx, now, zone()));
        List<Piece> waiting = casebook.queue(now).stream().map(Piece::of).toList();
        List<Piece> all = new ArrayList<>(waiting);
        all.addAll(expected(pace, now));
        Projection run = run(all, working, pace, now);
        long broken = run.broken(now, now.plus(AHEAD));
        double load = pace.load(now, zone());
        return new Horizon(
                now,
                pace,
                working,
                waiting.size(),
                (int) waiting.stream().filter(p -> p.brokenBy(now)).count(),
                now.plus(AHEAD),
                run.clear(),
                (int) broken,
                more(all, working, pace, now, broken),
                pace.rate(now, zone()),
                ErlangC.waits(working, load),
                ErlangC.peopleFor(load, pace.handling(), rules.service().replyPromise(), SHARE, MOST_PEOPLE),
                late(run, now));
    }

    private ZoneId zone() {
        return rules.timing().zone();
    }

    private static Projection run(List<Piece> all, int people, Pace pace, Instant now) {
        return Projection.run(all, people, pace.handling(), now, now.plus(AHEAD));
    }

    /** Spread evenly over each hour: the next one comes when the rate since the last one adds up to one. */
    List<Piece> expected(Pace pace, Instant now) {
        List<Piece> all = new ArrayList<>();
        double due = 0;
        for (Instant t = now; t.isBefore(now.plus(AHEAD)); t = t.plusSeconds(60)) {
            due += pace.rate(t, zone()) / 60;
            while (due >= 1) {
                all.add(Piece.expected(t, t.plus(rules.service().replyPromise())));
                due -= 1;
            }
        }
        return all;
    }

    /** The fewest more people with whom no promise breaks that can still be kept. */
    private static Optional<Integer> more(List<Piece> all, int people, Pace pace, Instant now, long broken) {
        if (broken == 0) {
            return Optional.of(0);
        }
        for (int n = people + 1; n <= MOST_PEOPLE; n++) {
            if (run(all, n, pace, now).broken(now, now.plus(AHEAD)) == 0) {
                return Optional.of(n - people);
            }
        }
        return Optional.empty();
    }

    private static List<Late> late(Projection run, Instant now) {
        return run.done().stream()
                .filter(d -> d.piece().id().isPresent() && d.piece().brokenBy(d.answer()))
                .map(d -> new Late(d.piece().id().get(), d.piece().promised(), d.answer(), honest(d.answer(), now)))
                .collect(Collectors.toUnmodifiableList());
    }

    /** A fifth of the wait more, ten minutes at least, rounded up to five: a second broken word would be worse than a long one. */
    static Instant honest(Instant expected, Instant now) {
        Duration margin = Duration.between(now, expected).dividedBy(MARGIN_PARTS);
        Instant with = expected.plus(margin.compareTo(LEAST_MARGIN) > 0 ? margin : LEAST_MARGIN);
        long step = ROUNDED.toSeconds();
        return Instant.ofEpochSecond((with.getEpochSecond() + step - 1) / step * step);
    }
}
