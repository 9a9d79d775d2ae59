package org.tidegate.examination.subject;

import org.tidegate.examination.subject.StatedDate.Calendar;
import org.tidegate.examination.subject.StatedDate.Relative;
import org.tidegate.rules.WordKind;

/** Dates with words: 4 May, May 4th 2026, 5MAY, 4 de mayo, yesterday, anoche; weekdays and parts of the day. */
final class WordDateFinder implements Finder {

    private final MonthSpelling spelling;

    WordDateFinder(MonthSpelling spelling) {
        this.spelling = spelling;
    }

    @Override
    public void find(Line line, int at, Candidates out) {
        if (line.isNumber(at)) {
            dayFirst(line, at, out);
            return;
        }
        if (!line.isWord(at)) {
            return;
        }
        monthFirst(line, at, out);
        for (Lexicon.Match m : line.matches(at)) {
            relative(at, m, out);
            Meaning meaning = m.meaning();
            boolean code = line.isNumber(at + 1) && line.glued(at + 1) && m.length() == 1;
            boolean ordinal = line.isNumber(at - 1) && line.glued(at) && meaning.is(WordKind.ORDINAL);
            if (meaning.weekday() > 0 && !code && !ordinal) {
                out.add(day(Candidate.Field.WEEKDAY, line, at, m.length(), meaning.weekday()));
            }
            if (meaning.hours() != 0) {
                double cost = NamePart.last(line, at) ? 0.9 : 0.15;
                out.add(new Candidate(
                        Candidate.Field.PERIOD, at, at + m.length(), cost, new Candidate.Days(meaning.hours())));
            }
        }
    }

    /** A weekday is likelier beside a date or time than beside a name. */
    private static Candidate day(Candidate.Field field, Line line, int at, int length, int value) {
        int end = line.isSign(at + length, ".") && line.glued(at + length) ? at + length + 1 : at + length;
        boolean beside = line.isNumber(end)
                || line.isNumber(at - 1)
                || line.isSign(end, ",")
                || line.isSign(at - 1, ",") && line.isNumber(at - 2)
                || line.meaning(end).calendar();
        double cost = beside && !NamePart.shaped(line, at) ? 0 : 0.3;
        return new Candidate(field, at, end, cost, new Candidate.Days(value));
    }

    private static void relative(int at, Lexicon.Match m, Candidates out) {
        int end = at + m.length();
        if (m.meaning().is(WordKind.LAST_NIGHT)) {
            StatedDate night = StatedDate.of(new Relative(-1, true, 0, 0), new Relative(0, true, 0, 0.2));
            out.add(new Candidate(Candidate.Field.DATE, at, end, -0.3 * m.length(), night));
            return;
        }
        Integer days = m.meaning().dayOffset();
        if (days != null) {
            int hours = m.meaning().hours();
            StatedDate date = StatedDate.of(
                    new Relative(days, false, hours, 0),
                    new Relative(days - 1, false, hours, 2),
                    new Relative(days + 1, false, hours, 2.5));
            double cost = (days > 0 ? 0.8 : 0) - 0.3 * (m.length() - 1);
            out.add(new Candidate(Candidate.Field.DATE, at, end, cost, date));
        }
    }

    private void dayFirst(Line line, int at, Candidates out) {
        Token day = line.token(at);
        boolean otherTime = line.isSign(at - 1, ":.") && line.glued(at) && line.isNumber(at - 2);
        if (day.digits() > 2 || day.number() < 1 || day.number() > 31 || otherTime) {
            return;
        }
        int month = joiners(line, at + 1);
        MonthSpelling.Reading reading = spelling.at(line, month);
        if (reading.month() > 0) {
            emit(line, at, month + reading.length(), new Calendar(0, reading.month(), day.number(), 0), reading, out);
        }
    }

    /** Over ordinal endings, dots, hyphens and "of". */
    private static int joiners(Line line, int from) {
        int i = from;
        if (line.glued(i) && line.is(i, WordKind.ORDINAL) && line.meaning(i).month() == 0) {
            i++;
        }
        while (line.isSign(i, ".-–/,º°'")) {
            i++;
        }
        return line.is(i, WordKind.OF) && line.meaning(i).month() == 0 ? i + 1 : i;
    }

    private void monthFirst(Line line, int at, Candidates out) {
        boolean numberNear = line.isNumber(at + 1) || line.isNumber(at + 2) || line.isNumber(at + 3);
        MonthSpelling.Reading reading = numberNear ? spelling.at(line, at) : MonthSpelling.NONE;
        if (reading.month() == 0) {
            return;
        }
        int i = at + reading.length();
        while (line.isSign(i, ".-–/,") || line.is(i, WordKind.OF) && !line.isNumber(i)) {
            i++;
        }
        boolean time = line.isSign(i + 1, ":.") && line.glued(i + 1) && line.isNumber(i + 2) && line.glued(i + 2)
                || line.is(i + 1, WordKind.HOUR_UNIT) && line.glued(i + 1);
        boolean day =
                line.isNumber(i) && line.token(i).digits() <= 2 && line.token(i).number() <= 31;
        if (day && !time && line.token(i).number() > 0) {
            int end = line.glued(i + 1) && line.is(i + 1, WordKind.ORDINAL) ? i + 2 : i + 1;
            emit(line, at, end, new Calendar(0, reading.month(), line.token(i).number(), 0.1), reading, out);
        }
    }

    private static void emit(
            Line line, int from, int end, Calendar date, MonthSpelling.Reading reading, Candidates out) {
        if (!StatedDate.valid(0, date.month(), date.day())) {
            return;
        }
        double cost = reading.cost() + date.cost() - 0.3;
        int dot = line.isSign(end, ".") && line.glued(end) ? end + 1 : end;
        out.add(new Candidate(Candidate.Field.DATE, from, dot, cost, StatedDate.of(date)));
        int year = yearAt(line, dot);
        if (year >= 0) {
            Calendar dated = new Calendar(DateFinder.year(line.token(year)), date.month(), date.day(), 0);
            int last = line.is(year + 1, WordKind.YEAR_UNIT) && line.isSign(year + 2, ".") ? year + 2 : year + 1;
            out.add(new Candidate(Candidate.Field.DATE, from, last, cost, StatedDate.of(dated)));
            out.add(Candidate.skip(from, last, 1.4));
        }
    }

    /** Index of a year behind a date, -1 for none. */
    private static int yearAt(Line line, int from) {
        int i = from;
        while (line.isSign(i, ",.-–/'’") || line.is(i, WordKind.OF)) {
            i++;
        }
        if (!line.isNumber(i)) {
            return -1;
        }
        Token t = line.token(i);
        boolean four = t.digits() == 4 && t.number() >= 1900 && t.number() < 2100;
        boolean two = t.digits() == 2 && i > from && line.glued(i) && !line.isSign(i + 1, ":.h");
        return four || two ? i : -1;
    }
}
