package org.tidegate.report;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tidegate.store.Tx;
import org.tidegate.store.Workload.Act;

/**
 * How fast work comes and goes, out of the stored history.
 *
 * @param anHour arrivals expected in each hour of the clinic's day, 0 to 23
 * @param handling mean time that a person takes for a piece
 * @param pieces how many pieces that mean rests on; 0 where it is only assumed
 * @param days how many days of history the arrivals rest on; 0 where only the last two hours do
 */
public record Pace(List<Double> anHour, Duration handling, int pieces, int days) {

    /** How far back it looks. */
    static final Duration HISTORY = Duration.ofDays(28);

    /** A longer time between two pieces of one person is a pause, not work. Common practice, no source. */
    static final Duration PAUSE = Duration.ofMinutes(15);

    /** Where nothing was handled yet. Common practice, no source. */
    static final Duration ASSUMED = Duration.ofMinutes(3);

    private static final int FEWEST_PIECES = 5;
    private static final Duration RECENT = Duration.ofHours(2);
    private static final int HOURS = 24;

    public Pace {
        anHour = List.copyOf(anHour);
    }

    static Pace of(Tx tx, Instant now, ZoneId zone) {
        List<Duration> handled = handled(tx.workload().acts(now.minus(HISTORY)));
        boolean known = handled.size() >= FEWEST_PIECES;
        Duration handling = known ? mean(handled) : ASSUMED;
        int days = (int) tx.workload()
                .firstArrival()
                .map(first -> Duration.between(first, now).toDays())
                .map(d -> Math.min(d, HISTORY.toDays()))
                .orElse(0L)
                .longValue();
        List<Double> anHour = days == 0
                ? recent(tx.workload().arrivals(now.minus(RECENT), now).size())
                : byHour(tx.workload().arrivals(now.minus(Duration.ofDays(days)), now), days, zone);
        return new Pace(anHour, handling, known ? handled.size() : 0, days);
    }

    /** Every hour as the last two. */
    private static List<Double> recent(int arrivals) {
        return Collections.nCopies(HOURS, arrivals / (double) RECENT.toHours());
    }

    static List<Double> byHour(List<Instant> arrivals, int days, ZoneId zone) {
        double[] counts = new double[HOURS];
        arrivals.forEach(a -> counts[a.atZone(zone).getHour()]++);
        List<Double> rates = new ArrayList<>();
        for (double count : counts) {
            rates.add(count / days);
        }
        return rates;
    }

    /**
     * How long each piece took: from the end of the same person's piece before, or from its arrival where that was later. What
     * took longer than a pause is left out: the person did something else meanwhile.
     */
    static List<Duration> handled(List<Act> acts) {
        List<Duration> all = new ArrayList<>();
        for (int i = 1; i < acts.size(); i++) {
            Act before = acts.get(i - 1);
            Act act = acts.get(i);
            boolean last = i + 1 == acts.size() || !samePiece(act, acts.get(i + 1));
            if (act.who().equals(before.who()) && last) {
                Instant began = act.arrived().isAfter(end(acts, i)) ? act.arrived() : end(acts, i);
                Duration took = Duration.between(began, act.when());
                if (took.compareTo(Duration.ZERO) > 0 && took.compareTo(PAUSE) <= 0) {
                    all.add(took);
                }
            }
        }
        return all;
    }

    /** When the same person's piece before the one of act {@code i} ended; that piece's beginning of time where there is none. */
    private static Instant end(List<Act> acts, int i) {
        int at = i - 1;
        while (at >= 0 && samePiece(acts.get(at), acts.get(i))) {
            at--;
        }
        boolean same = at >= 0 && acts.get(at).who().equals(acts.get(i).who());
        return same ? acts.get(at).when() : Instant.MIN;
    }

    private static boolean samePiece(Act a, Act b) {
        return a.who().equals(b.who()) && a.submission().equals(b.submission());
    }

    private static Duration mean(List<Duration> all) {
        return all.stream()
                .reduce(Duration.ZERO, Duration::plus)
                .dividedBy(all.size())
                .truncatedTo(ChronoUnit.SECONDS);
    }

    /** Arrivals an hour that are expected at this time. */
    double rate(Instant time, ZoneId zone) {
        return anHour.get(time.atZone(zone).getHour());
    }

    /** Offered load at this time, in erlangs. */
    double load(Instant time, ZoneId zone) {
        return rate(time, zone) * handling.toSeconds() / Duration.ofHours(1).toSeconds();
    }
}
