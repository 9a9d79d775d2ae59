package org.tidegate.examination.subject;

import java.util.List;
import java.util.Optional;
import org.tidegate.rules.WordKind;

/** Times in digits: 6.42pm, 0509HRS, 17h36, 9:31, 0531, kl 7, with the zone beside them. */
final class TimeFinder implements Finder {

    private static final String SEPARATORS = ":.;,-'’·";

    /** The time of the photo or the reading is taken for the test's only where there is no other. */
    private static final double OTHER = 0.9;

    private static final double ZONE_FIRST = 0.2;

    /** Behind what may be a label or the end of a name: Day 1714. */
    private static final double LABEL_OR_NAME = 0.5;

    /** Words shorter than this before digits make a code. */
    private static final int SHORTEST_BEFORE_TIME = 4;

    private final Zones zones;

    TimeFinder(Zones zones) {
        this.zones = zones;
    }

    @Override
    public void find(Line line, int at, Candidates out) {
        if (line.isWord(at)) {
            zoneFirst(line, at, out);
            return;
        }
        if (!line.isNumber(at) || insideLongerNumber(line, at)) {
            return;
        }
        Optional<Digits> found = separated(line, at).or(() -> compact(line, at)).or(() -> hourOnly(line, at));
        found.ifPresent(d -> add(line, at, d, out));
    }

    /** UTC+8 16:20, Lagos time 10:05. */
    private void zoneFirst(Line line, int at, Candidates out) {
        for (Zones.Found z : zones.after(line, at)) {
            int from = line.isSign(z.end(), ":") ? z.end() + 1 : z.end();
            if (line.isNumber(from) && z.cost() == 0) {
                separated(line, from).or(() -> compact(line, from)).ifPresent(d -> {
                    ClockTime time = ClockTime.of(d.hour() * 60 + d.minute(), d.hour() > 12 || d.leadingZero())
                            .in(z.zone(), z.text());
                    out.add(new Candidate(Candidate.Field.TIME, at, d.end(), d.cost() - ZONE_FIRST, time));
                });
            }
        }
    }

    /** Hour and minute up to a token, before am or pm and the like. */
    private record Digits(int hour, int minute, int end, double cost, boolean leadingZero) {}

    private void add(Line line, int at, Digits d, Candidates out) {
        int end = d.end();
        double cost = d.cost();
        boolean unit = line.length(end, WordKind.HOUR_UNIT) > 0 && !line.is(end, WordKind.OF);
        if (unit) {
            end += line.length(end, WordKind.HOUR_UNIT);
            cost = Math.min(cost, 0.2);
        }
        int period = glued12(line, end, d);
        ClockTime time = ClockTime.of(d.hour() * 60 + d.minute(), d.hour() > 12 || d.hour() == 0 || d.leadingZero());
        if (period != 0) {
            time = ClockTime.of(d.hour() % 12 * 60 + d.minute(), false).within(period);
            end = line.isSign(end, ".") ? end + 1 : end;
            end += line.matches(end).get(0).length();
            end = line.isSign(end, ".") ? end + 1 : end;
            cost = 0;
        }
        cost += context(line, at, end);
        emit(line, at, end, d.end(), time, cost, out);
    }

    /** @param digitsEnd behind the digits: "heure" in "heure de Paris" is no unit */
    private void emit(Line line, int at, int end, int digitsEnd, ClockTime time, double cost, Candidates out) {
        out.add(new Candidate(Candidate.Field.TIME, at, end, cost, time));
        out.add(Candidate.skip(at, end, cost + 1.2));
        List<Zones.Found> found = zones.after(line, end);
        for (Zones.Found z : found.isEmpty() && digitsEnd < end ? zones.after(line, digitsEnd) : found) {
            ClockTime zoned = time.in(z.zone(), z.text());
            out.add(new Candidate(Candidate.Field.TIME, at, z.end(), cost - 0.5 + z.cost(), zoned));
            out.add(Candidate.skip(at, z.end(), cost + (z.home() ? 1.5 : 0.4)));
        }
    }

    /** Half-of-day words that belong to a time of up to 12 hours: am, p.m., 上午. */
    private static int glued12(Line line, int end, Digits d) {
        int at = line.isSign(end, ".") ? end + 1 : end;
        if (d.hour() > 12 || !line.isWord(at) || line.matches(at).isEmpty()) {
            return 0;
        }
        Meaning m = line.matches(at).get(0).meaning();
        boolean half = m.is(WordKind.MORNING) || m.is(WordKind.EVENING);
        return half && line.token(at).text().length() <= 5 ? m.hours() : 0;
    }

    private static double context(Line line, int at, int end) {
        double cost = 0;
        if (line.after(at, WordKind.TIME_CUE)) {
            cost -= 0.4;
        }
        if (line.after(at, WordKind.LABEL)
                && !line.after(at, WordKind.TIME_CUE)
                && !(line.after(at, WordKind.FILLER) && end > at + 1)) {
            cost += NamePart.behindName(line, line.isSign(at - 1, "-") ? at - 2 : at - 1) ? LABEL_OR_NAME : 1.5;
        }
        if (line.after(at, WordKind.DATE_CUE) && !line.after(at, WordKind.TIME_CUE)) {
            cost += 0.8;
        }
        if (line.isSign(at - 1, "-–") && line.isNumber(at - 2) && line.looksLikeTime(at - 4)) {
            cost += OTHER;
        }
        int cue = line.after(at, WordKind.TIME_CUE) ? at - 1 : at;
        if (line.after(at, WordKind.OTHER_TIME) || line.after(cue, WordKind.OTHER_TIME)) {
            cost += OTHER;
        }
        return line.isSign(end, "%°€$£") ? cost + 4 : cost;
    }

    private static boolean insideLongerNumber(Line line, int at) {
        boolean slashBetween = line.isSign(at - 1, "/") && line.isSign(at - 3, ".:-") && line.isSign(at + 1, ".:");
        boolean dashBetween = line.isSign(at - 1, "-") && !(line.isSign(at + 1, "-") && line.isNumber(at + 2));
        boolean dateBefore =
                line.isSign(at - 3, ".:/") || line.token(Math.max(0, at - 2)).digits() > 4;
        return line.isSign(at - 1, ".:/,-+")
                        && line.glued(at)
                        && line.glued(at - 1)
                        && line.isNumber(at - 2)
                        && !slashBetween
                        && !(dashBetween && dateBefore)
                || line.isSign(at - 1, "+") && line.glued(at)
                || line.glued(at) && line.isWord(at - 1) && codeBefore(line, at - 1) && !nameBefore(line, at);
    }

    /** Letters glued before a number make a code, unless they are a word of time or separate a run without spaces. */
    private static boolean codeBefore(Line line, int word) {
        Meaning m = line.meaning(word);
        boolean known = m.hours() != 0
                || m.month() > 0
                || m.is(WordKind.TIME_CUE)
                || m.is(WordKind.HOUR_UNIT)
                || m.is(WordKind.DAY_UNIT)
                || m.clinic().isPresent()
                || m.weekday() > 0
                || line.token(word).key().equals("t") && line.glued(word) && line.isNumber(word - 1);
        return !known && !Tokenizer.unspaced(line.token(word).text().codePointAt(0));
    }

    /** A longer word of unknown meaning runs into what is a time beyond doubt: Dardanelli10:37. */
    private static boolean nameBefore(Line line, int at) {
        Token word = line.token(at - 1);
        boolean time = line.looksLikeTime(at) || line.token(at).digits() == 4;
        return time
                && word.text().length() >= SHORTEST_BEFORE_TIME
                && line.meaning(at - 1).unknown();
    }

    private static Optional<Digits> separated(Line line, int at) {
        Token hour = line.token(at);
        if (hour.digits() > 2 || hour.number() > 24) {
            return Optional.empty();
        }
        int minuteAt = minuteAt(line, at);
        if (minuteAt < 0) {
            return Optional.empty();
        }
        Token minute = line.token(minuteAt);
        boolean hourWord = line.isWord(at + 1);
        boolean fits = minute.number() <= 59 && (minute.digits() == 2 || hourWord && minute.digits() == 1);
        boolean longer = line.isSign(minuteAt + 1, "./-")
                && line.glued(minuteAt + 1)
                && line.isNumber(minuteAt + 2)
                && line.glued(minuteAt + 2);
        if (!fits || longer && !line.isSign(at + 1, ":")) {
            return Optional.empty();
        }
        int end = afterMinutes(line, minuteAt + 1);
        return Optional.of(new Digits(
                hour.number() % 24, minute.number(), end, separatorCost(line, at, minuteAt), zeroFirst(hour)));
    }

    /** Index of the minutes behind the separator, -1 for none. */
    private static int minuteAt(Line line, int at) {
        if (line.isNumber(at + 1)) {
            boolean alone = !line.isNumber(at + 2) && !line.isSign(at + 2, "/.-:");
            return alone && !line.glued(at + 1) ? at + 1 : -1;
        }
        boolean sign = line.isSign(at + 1, SEPARATORS);
        boolean unit = line.length(at + 1, WordKind.HOUR_UNIT) == 1
                && line.token(at + 1).text().length() <= 6;
        if (unit && line.isSign(at + 2, ".") && line.isNumber(at + 3)) {
            return at + 3;
        }
        boolean twice = sign && line.glued(at + 1) && line.isSign(at + 2, SEPARATORS) && line.glued(at + 2);
        if (twice && line.isNumber(at + 3) && line.glued(at + 3)) {
            return at + 3;
        }
        if (!sign && !unit || !line.isNumber(at + 2)) {
            return -1;
        }
        boolean tight = line.glued(at + 1) && line.glued(at + 2);
        return tight || unit || line.isSign(at + 1, ":") ? at + 2 : -1;
    }

    private static double separatorCost(Line line, int at, int minuteAt) {
        if (minuteAt == at + 1) {
            return 1.3;
        }
        if (line.isWord(at + 1) || line.isSign(at + 1, ":")) {
            return line.glued(at + 1) ? 0 : 0.3;
        }
        return line.isSign(at + 1, ".;") ? 0.4 : line.isSign(at + 1, "-") ? 1.2 : 0.8;
    }

    /** Seconds and a unit of minutes. */
    private static int afterMinutes(Line line, int at) {
        int end = at;
        if (line.isSign(end, ":")
                && line.isNumber(end + 1)
                && line.token(end + 1).digits() == 2) {
            end += 2;
        }
        boolean unit = line.is(end, WordKind.MINUTE_UNIT)
                && !line.is(end, WordKind.MORNING)
                && !line.is(end, WordKind.EVENING)
                && line.glued(end);
        return unit && !line.isNumber(end + 1) ? end + 1 : end;
    }

    private static Optional<Digits> compact(Line line, int at) {
        Token t = line.token(at);
        boolean apart = !line.isSign(at + 1, ".:/")
                || !line.glued(at + 1)
                || !line.isNumber(at + 2)
                || DateFinder.fourAndFour(line, at)
                || dayAndMonthWord(line, at + 2);
        if (t.digits() < 3 || t.digits() > 4 || t.number() % 100 > 59 || t.number() / 100 > 23 || !apart) {
            return Optional.empty();
        }
        if (line.isWord(at + 1) && line.glued(at + 1) && !timeWord(line, at + 1)) {
            return Optional.empty();
        }
        boolean zero = zeroFirst(t);
        boolean year = t.digits() == 4 && t.number() >= 1930 && t.number() <= 2035;
        double cost = t.digits() == 3 ? 1.5 : zero ? 0.6 : year ? 2 : 0.9;
        return Optional.of(new Digits(t.number() / 100, t.number() % 100, at + 1, cost, zero || t.digits() == 4));
    }

    /** 9JUN: behind a slash no part of the time before it. */
    private static boolean dayAndMonthWord(Line line, int at) {
        return line.token(at).digits() <= 2
                && line.isWord(at + 1)
                && line.glued(at + 1)
                && line.meaning(at + 1).month() > 0;
    }

    private static boolean timeWord(Line line, int i) {
        return line.is(i, WordKind.HOUR_UNIT)
                || line.meaning(i).hours() != 0
                || line.token(i).key().equals("z")
                || line.meaning(i).clinic().isPresent();
    }

    private static Optional<Digits> hourOnly(Line line, int at) {
        Token t = line.token(at);
        if (t.digits() > 2 || t.number() > 24 || line.isSign(at + 1, "/.:-,%°") && line.isNumber(at + 2)) {
            return Optional.empty();
        }
        boolean unit = line.length(at + 1, WordKind.HOUR_UNIT) > 0 && !line.is(at + 1, WordKind.OF);
        int period = glued12(line, at + 1, new Digits(t.number(), 0, at + 1, 0, false));
        double cost = period != 0 ? 0 : unit ? 0.6 : line.after(at, WordKind.TIME_CUE) ? 1.8 : 9;
        return cost > 5 ? Optional.empty() : Optional.of(new Digits(t.number() % 24, 0, at + 1, cost, zeroFirst(t)));
    }

    private static boolean zeroFirst(Token t) {
        return t.text().startsWith("0") && t.digits() > 1;
    }
}
