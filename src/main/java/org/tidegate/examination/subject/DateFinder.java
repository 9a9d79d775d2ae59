package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.List;
import org.tidegate.examination.subject.StatedDate.Calendar;
import org.tidegate.rules.WordKind;

/** Dates in digits, in any order: 4/5, 4.5.26, 04-05-2026, 2026-05-04, 04052026, 5月4日, "date 0405", the 4th. */
final class DateFinder implements Finder {

    /** What a month before the day costs beside a day before the month. */
    private static final double MONTH_FIRST = 0.4;

    private static final String SEPARATORS = "/.-–";

    @Override
    public void find(Line line, int at, Candidates out) {
        if (!line.isNumber(at) || partOfMore(line, at)) {
            return;
        }
        parts(line, at, out);
        compact(line, at, out);
        withUnits(line, at, out);
        dayOnly(line, at, out);
    }

    private static boolean partOfMore(Line line, int at) {
        boolean slashBetween = line.isSign(at - 1, "/") && line.isSign(at - 3, ".:-") && line.isSign(at + 1, ".-");
        return line.isSign(at - 1, ".:/-")
                && line.glued(at)
                && line.glued(at - 1)
                && line.isNumber(at - 2)
                && !slashBetween
                && !fourAndFour(line, at - 2);
    }

    /** Time and date without signs inside, a slash between: 1026/0705. */
    static boolean fourAndFour(Line line, int at) {
        return line.isSign(at + 1, "/")
                && line.token(at).digits() == 4
                && line.isNumber(at + 2)
                && line.token(at + 2).digits() == 4;
    }

    private static void parts(Line line, int at, Candidates out) {
        int second = next(line, at);
        if (second < 0) {
            return;
        }
        int third = next(line, second);
        boolean sameSign = third >= 0
                && line.token(at + 1).key().equals(line.token(second + 1).key());
        double spaced = line.glued(at + 1) ? 0 : 0.3;
        if (third >= 0 && sameSign) {
            threeParts(line, at, second, third, spaced, out);
        }
        if (third < 0 || !line.glued(second + 1)) {
            double cost = line.isSign(at + 1, "/") ? 0 : line.isSign(at + 1, ".") ? 0.3 : 0.6;
            List<StatedDate.Option> options = dayAndMonth(0, line.token(at), line.token(second));
            emit(line, at, trailing(line, second + 1), cost + spaced, options, out);
        }
    }

    /** The number behind one separator, -1 for none. */
    private static int next(Line line, int at) {
        boolean tight = line.glued(at + 1) == line.glued(at + 2);
        return line.isSign(at + 1, SEPARATORS) && line.isNumber(at + 2) && tight ? at + 2 : -1;
    }

    private static int trailing(Line line, int at) {
        return line.isSign(at, ".") && line.glued(at) ? at + 1 : at;
    }

    private static void threeParts(Line line, int a, int b, int c, double cost, Candidates out) {
        List<StatedDate.Option> options = new ArrayList<>();
        if (line.token(a).digits() == 4) {
            options.addAll(option(
                    line.token(a).number(),
                    line.token(b).number(),
                    line.token(c).number(),
                    0));
        } else if (line.token(c).digits() == 4 || line.token(c).digits() == 2) {
            int year = year(line.token(c));
            options.addAll(dayAndMonth(year, line.token(a), line.token(b)));
            if (line.token(a).digits() == 2 && line.token(c).digits() == 2) {
                options.addAll(option(
                        year(line.token(a)),
                        line.token(b).number(),
                        line.token(c).number(),
                        0.8));
            }
        }
        emit(line, a, trailing(line, c + 1), cost, options, out);
    }

    static int year(Token t) {
        return t.digits() == 4 ? t.number() : 2000 + t.number();
    }

    private static List<StatedDate.Option> dayAndMonth(int year, Token a, Token b) {
        if (a.digits() > 2 || b.digits() > 2) {
            return List.of();
        }
        List<StatedDate.Option> options = new ArrayList<>(option(year, b.number(), a.number(), 0));
        options.addAll(option(year, a.number(), b.number(), MONTH_FIRST));
        return options;
    }

    private static List<StatedDate.Option> option(int year, int month, int day, double cost) {
        return StatedDate.valid(year, month, day) ? List.of(new Calendar(year, month, day, cost)) : List.of();
    }

    private static void emit(
            Line line, int from, int to, double cost, List<StatedDate.Option> options, Candidates out) {
        double cued = line.after(from, WordKind.DATE_CUE) ? cost - 0.4 : cost;
        double labelled = line.after(from, WordKind.LABEL) ? cued + 1 : cued;
        if (!options.isEmpty()) {
            out.add(new Candidate(Candidate.Field.DATE, from, to, labelled, new StatedDate(options)));
            out.add(Candidate.skip(from, to, 1.4));
        }
    }

    private static void compact(Line line, int at, Candidates out) {
        String s = line.token(at).text();
        if (line.glued(at) && line.isWord(at - 1)) {
            return;
        }
        List<StatedDate.Option> options = new ArrayList<>();
        switch (s.length()) {
            case 8 -> {
                options.addAll(option(part(s, 0, 4), part(s, 4, 6), part(s, 6, 8), 0));
                options.addAll(option(part(s, 4, 8), part(s, 2, 4), part(s, 0, 2), 0));
                options.addAll(option(part(s, 4, 8), part(s, 0, 2), part(s, 2, 4), MONTH_FIRST));
            }
            case 6 -> {
                options.addAll(option(2000 + part(s, 4, 6), part(s, 2, 4), part(s, 0, 2), 0));
                options.addAll(option(2000 + part(s, 0, 2), part(s, 2, 4), part(s, 4, 6), 0.3));
                options.addAll(option(2000 + part(s, 4, 6), part(s, 0, 2), part(s, 2, 4), MONTH_FIRST));
            }
            case 4 -> {
                options.addAll(option(0, part(s, 2, 4), part(s, 0, 2), 0));
                options.addAll(option(0, part(s, 0, 2), part(s, 2, 4), MONTH_FIRST));
            }
            default -> {}
        }
        boolean cued = line.after(at, WordKind.DATE_CUE);
        double cost = s.length() == 8 ? 0.3 : s.length() == 6 ? 0.8 : 1.6;
        emit(line, at, at + 1, cued ? cost / 4 : cost, options, out);
    }

    private static int part(String s, int from, int to) {
        return Integer.parseInt(s.substring(from, to));
    }

    /** 2026年5月4日, 5월 4일, ngày 4 tháng 5. */
    private static void withUnits(Line line, int at, Candidates out) {
        if (line.is(at + 1, WordKind.YEAR_UNIT) && line.token(at).digits() == 4 && line.isNumber(at + 2)) {
            monthUnit(line, at, at + 2, line.token(at).number(), out);
        }
        monthUnit(line, at, at, 0, out);
        boolean behind = line.is(at + 1, WordKind.MONTH_UNIT) && line.isNumber(at + 2) && !line.glued(at + 1);
        if (behind) {
            emit(
                    line,
                    at,
                    at + 3,
                    -0.2,
                    option(0, line.token(at + 2).number(), line.token(at).number(), 0),
                    out);
        }
    }

    private static void monthUnit(Line line, int from, int month, int year, Candidates out) {
        if (line.is(month + 1, WordKind.MONTH_UNIT) && line.isNumber(month + 2) && line.glued(month + 1)) {
            int end = line.is(month + 3, WordKind.DAY_UNIT) ? month + 4 : month + 3;
            int day = line.token(month + 2).number();
            emit(line, from, end, 0, option(year, line.token(month).number(), day, 0), out);
        }
    }

    /** The 4th; 4日. */
    private static void dayOnly(Line line, int at, Candidates out) {
        boolean unit = line.glued(at + 1) && (line.is(at + 1, WordKind.ORDINAL) || line.is(at + 1, WordKind.DAY_UNIT));
        int day = line.token(at).number();
        boolean weekdayBefore =
                line.meaning(line.isSign(at - 1, ".,") ? at - 2 : at - 1).weekday() > 0;
        if (day >= 1 && day <= 31 && line.token(at).digits() <= 2 && (unit || weekdayBefore)) {
            StatedDate date = StatedDate.of(new Calendar(0, 0, day, 0));
            out.add(new Candidate(Candidate.Field.DATE, at, unit ? at + 2 : at + 1, unit ? 0.5 : 1, date));
        }
    }
}
