package org.tidegate.report;

import java.time.Duration;

/**
 * The queue M/M/c: pieces arrive at random, each of several people takes one at a time, whoever is free takes the next. Formulas as in
 * A. K. Erlang, Solution of some Problems in the Theory of Probabilities of Significance in Automatic Telephone Exchanges (1917).
 */
public final class ErlangC {

    private ErlangC() {}

    /**
     * The probability that a piece finds everybody busy, where what finds them so goes away (Erlang B).
     *
     * @param servers 0 or more
     * @param load offered load in erlangs: arrivals in the time that one piece takes; 0 or more
     * @throws IllegalArgumentException where either is negative or no number
     */
    public static double blocked(int servers, double load) {
        check(servers, load);
        double blocked = 1;
        for (int n = 1; n <= servers; n++) {
            blocked = load * blocked / (n + load * blocked);
        }
        return blocked;
    }

    /**
     * The probability that a piece has to wait (Erlang C). 1 where the load is as great as the number of people or greater: then the
     * queue grows without end.
     *
     * @throws IllegalArgumentException as {@link #blocked}
     */
    public static double waits(int servers, double load) {
        check(servers, load);
        if (load >= servers) {
            return load == 0 ? 0 : 1;
        }
        double blocked = blocked(servers, load);
        return servers * blocked / (servers - load * (1 - blocked));
    }

    /**
     * The share of pieces that are taken up within a time.
     *
     * @param handling mean time that one piece takes, longer than nothing
     */
    public static double takenUpWithin(int servers, double load, Duration handling, Duration within) {
        if (handling.isNegative() || handling.isZero() || within.isNegative()) {
            throw new IllegalArgumentException("a handling time is longer than nothing, a wait not negative");
        }
        if (load >= servers) {
            return load == 0 ? 1 : 0;
        }
        double turns = (double) within.toMillis() / handling.toMillis();
        return 1 - waits(servers, load) * Math.exp(-(servers - load) * turns);
    }

    /**
     * The fewest people with whom at least this share is taken up within the time.
     *
     * @param share below 1
     * @param most how many there may be at most
     * @return {@code most + 1} where even that many are too few
     */
    public static int peopleFor(double load, Duration handling, Duration within, double share, int most) {
        int people = 0;
        while (people <= most && takenUpWithin(people, load, handling, within) < share) {
            people++;
        }
        return people;
    }

    private static void check(int servers, double load) {
        if (servers < 0 || !(load >= 0) || Double.isInfinite(load)) {
            throw new IllegalArgumentException("no such queue: " + servers + " people, " + load + " erlangs");
        }
    }
}
