package org.tidegate.examination.subject;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Dates in any order, the one nearest the arrival being meant; relative words; months from CLDR. */
final class DateFinder {

    private static final Map<String, Integer> RELATIVE = Map.ofEntries(
            Map.entry("today", 0),
            Map.entry("yesterday", -1),
            Map.entry("hoy", 0),
            Map.entry("ayer", -1),
            Map.entry("anoche", -1),
            Map.entry("hier", -1),
            Map.entry("gestern", -1),
            Map.entry("heute", 0),
            Map.entry("ieri", -1),
            Map.entry("oggi", 0),
            Map.entry("ontem", -1),
            Map.entry("hoje", 0),
            Map.entry("wczoraj", -1),
            Map.entry("dzis", 0),
            Map.entry("dzisiaj", 0),
            Map.entry("вчера", -1),
            Map.entry("сегодня", 0),
            Map.entry("вчора", -1),
            Map.entry("сьогодні", 0),
            Map.entry("gisteren", -1),
            Map.entry("vandaag", 0),
            Map.entry("igar", -1),
            Map.entry("idag", 0));

    private final List<Token> tokens;
    private final LocalDate arrived;

    DateFinder(List<Token> tokens, LocalDate arrived) {
        this.tokens = tokens;
        this.arrived = arrived;
    }

    List<Found<LocalDate>> find() {
        List<Found<LocalDate>> found = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            relative(i).ifPresent(found::add);
            numeric(i).ifPresent(found::add);
            withMonthWord(i).ifPresent(found::add);
            compact(i).ifPresent(found::add);
        }
        return found;
    }

    private Optional<Found<LocalDate>> relative(int i) {
        if (tokens.get(i).key().equals("last")
                && i + 1 < tokens.size()
                && tokens.get(i + 1).key().equals("night")) {
            return Optional.of(new Found<>(arrived.minusDays(1), i, i + 2, 0));
        }
        Integer days = RELATIVE.get(tokens.get(i).key());
        return days == null ? Optional.empty() : Optional.of(new Found<>(arrived.plusDays(days), i, i + 1, 0));
    }

    /** {@code 4/5}, {@code 4.5.26}, {@code 2026-05-04}. */
    private Optional<Found<LocalDate>> numeric(int i) {
        if (i + 2 >= tokens.size()
                || !tokens.get(i).number()
                || !tokens.get(i + 1).mark("/.-")
                || !tokens.get(i + 2).number()) {
            return Optional.empty();
        }
        String separator = tokens.get(i + 1).text();
        boolean third = i + 4 < tokens.size()
                && tokens.get(i + 3).text().equals(separator)
                && tokens.get(i + 4).number();
        int a = value(i);
        int b = value(i + 2);
        if (third) {
            int c = value(i + 4);
            List<LocalDate> orders =
                    tokens.get(i).text().length() == 4 ? dates(a, b, c, a, c, b) : dates(year(c), b, a, year(c), a, b);
            return nearest(orders).map(d -> new Found<>(d, i, i + 5, 0));
        }
        double cost = separator.equals("/") ? 0.1 : separator.equals("-") ? 1 : 0.5;
        List<LocalDate> orders = dates(arrived.getYear(), b, a, arrived.getYear(), a, b);
        int end = i + 3 < tokens.size()
                        && tokens.get(i + 3).mark(".")
                        && tokens.get(i + 3).glued()
                ? i + 4
                : i + 3;
        return nearest(orders)
                .map(d -> new Found<>(
                        d, i, end, cost + 0.3 * Math.min(10, Math.abs(ChronoUnit.DAYS.between(d, arrived)))));
    }

    /** {@code 4 May}, {@code May 4th}, {@code 5MAY}, {@code 04-May-26}, {@code 4 de mayo}. */
    private Optional<Found<LocalDate>> withMonthWord(int i) {
        Optional<Integer> month =
                tokens.get(i).word() ? CalendarWords.month(tokens.get(i).key()) : Optional.empty();
        if (month.isEmpty()) {
            return Optional.empty();
        }
        int before = skipBack(i - 1);
        if (before >= 0 && day(before)) {
            return build(month.get(), value(before), before, yearAfter(i + 1), i + 1);
        }
        int after = i + 1 < tokens.size() && tokens.get(i + 1).mark(".") ? i + 2 : i + 1;
        if (after < tokens.size()
                && day(after)
                && !(after + 1 < tokens.size() && tokens.get(after + 1).mark(":.h"))) {
            int end = ordinal(after + 1) ? after + 2 : after + 1;
            return build(month.get(), value(after), i, yearAfter(end), end);
        }
        return Optional.empty();
    }

    private Optional<Found<LocalDate>> build(int month, int day, int from, Optional<Integer> yearAt, int end) {
        int year = yearAt.map(y -> year(value(y))).orElse(arrived.getYear());
        return dates(year, month, day).stream()
                .findFirst()
                .map(d -> new Found<>(d, from, yearAt.map(y -> y + 1).orElse(end), 0));
    }

    private Optional<Integer> yearAfter(int at) {
        int i = at < tokens.size() && tokens.get(at).mark(",.-/") ? at + 1 : at;
        boolean year = i < tokens.size()
                && tokens.get(i).number()
                && (tokens.get(i).text().startsWith("20")
                                && tokens.get(i).text().length() == 4
                        || i > at
                                && tokens.get(at).mark("-/")
                                && tokens.get(i).text().length() == 2);
        return year ? Optional.of(i) : Optional.empty();
    }

    /** Over ordinal endings, {@code de}, dots and hyphens back to a day. */
    private int skipBack(int at) {
        int i = at;
        while (i >= 0
                && (tokens.get(i).mark(".-/")
                        || ordinal(i)
                        || List.of("de", "of", "d").contains(tokens.get(i).key()))) {
            i--;
        }
        return at - i <= 3 ? i : -1;
    }

    private boolean ordinal(int i) {
        return i < tokens.size()
                && i >= 0
                && List.of("st", "nd", "rd", "th", "er", "o")
                        .contains(tokens.get(i).key())
                && tokens.get(i).glued();
    }

    /** {@code date 0705}: day and month run together, only behind a word that says so. */
    private Optional<Found<LocalDate>> compact(int i) {
        boolean told = i > 0
                && List.of("date", "fecha", "datum", "data")
                        .contains(tokens.get(i - 1).key());
        if (!told || !tokens.get(i).number() || tokens.get(i).text().length() != 4) {
            return Optional.empty();
        }
        int a = value(i) / 100;
        int b = value(i) % 100;
        return nearest(dates(arrived.getYear(), b, a, arrived.getYear(), a, b))
                .map(d -> new Found<>(d, i - 1, i + 1, 0));
    }

    private boolean day(int i) {
        return tokens.get(i).number()
                && tokens.get(i).text().length() <= 2
                && value(i) >= 1
                && value(i) <= 31
                && !(i >= 2 && tokens.get(i - 1).mark(":") && tokens.get(i - 2).number());
    }

    private int value(int i) {
        String digits = tokens.get(i).text();
        return digits.length() > 6 ? -1 : Integer.parseInt(digits);
    }

    private static int year(int written) {
        return written < 100 ? 2000 + written : written;
    }

    /** The valid ones of the given year, month, day triples. */
    private static List<LocalDate> dates(int... triples) {
        List<LocalDate> dates = new ArrayList<>();
        for (int i = 0; i < triples.length; i += 3) {
            date(triples[i], triples[i + 1], triples[i + 2]).ifPresent(dates::add);
        }
        return dates;
    }

    private static Optional<LocalDate> date(int year, int month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private Optional<LocalDate> nearest(List<LocalDate> dates) {
        return dates.stream()
                .min(java.util.Comparator.comparingLong(d -> Math.abs(ChronoUnit.DAYS.between(d, arrived))));
    }
}
