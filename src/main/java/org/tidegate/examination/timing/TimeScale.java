package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Times as places across a drawing, in pixels; what lies far off is put at the edge. */
record TimeScale(Instant start, Instant end, int width) {

    private static final Duration MARGIN = Duration.ofMinutes(5);
    private static final Duration FURTHEST = Duration.ofHours(2);
    private static final List<Integer> STEPS = List.of(5, 10, 15, 30, 60, 120);

    /** Holds the windows and every clue within two hours of them. */
    static TimeScale of(TimeJudgement.ClockTimes windows, List<DrawnClue> clues, int width) {
        Instant first = windows.from().minus(FURTHEST);
        Instant last = windows.sendBy().plus(FURTHEST);
        List<Instant> near = Stream.concat(
                        clues.stream().flatMap(c -> Stream.concat(c.from().stream(), c.to().stream())),
                        Stream.of(windows.from(), windows.until(), windows.sendBy()))
                .filter(t -> t.isAfter(first) && t.isBefore(last))
                .sorted(Comparator.naturalOrder())
                .toList();
        return new TimeScale(
                near.get(0).minus(MARGIN), near.get(near.size() - 1).plus(MARGIN), width);
    }

    boolean holds(Instant time) {
        return !time.isBefore(start) && !time.isAfter(end);
    }

    int x(Instant time) {
        double part = (double) Duration.between(start, time).toMillis()
                / Duration.between(start, end).toMillis();
        return (int) Math.round(width * Math.min(1, Math.max(0, part)));
    }

    /** Round clock times for an axis, as many as have room. */
    List<Instant> ticks() {
        long minutes = Duration.between(start, end).toMinutes();
        int step = STEPS.stream()
                .filter(s -> minutes / s <= width / 60)
                .findFirst()
                .orElse(240);
        long seconds = step * 60L;
        List<Instant> ticks = new ArrayList<>();
        long at = Math.floorDiv(start.getEpochSecond(), seconds) * seconds + seconds;
        for (; at <= end.getEpochSecond(); at += seconds) {
            ticks.add(Instant.ofEpochSecond(at));
        }
        return ticks;
    }
}
