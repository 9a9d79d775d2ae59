package org.tidegate.examination.subject;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Clock times written with digits: {@code 9.05am}, {@code 17h36}, {@code 0509HRS}, {@code o9:47}. */
final class TimeFinder {

    private static final String SEPARATORS = ":.：·h";

    private final List<Token> tokens;

    TimeFinder(List<Token> tokens) {
        this.tokens = tokens;
    }

    /** A wall time; {@code halfKnown} is false where it might be meant on a twelve-hour clock. */
    record Clock(LocalTime time, boolean halfKnown) {}

    List<Found<Clock>> find() {
        List<Found<Clock>> found = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            pair(i).ifPresent(found::add);
            compact(i).ifPresent(found::add);
            hourOnly(i).ifPresent(found::add);
        }
        return found;
    }

    /** Hour, separator, minute. */
    private Optional<Found<Clock>> pair(int i) {
        Token hour = tokens.get(i);
        if (!hour.number() || hour.text().length() > 2 || i + 2 >= tokens.size()) {
            return Optional.empty();
        }
        Token separator = tokens.get(i + 1);
        Token minute = tokens.get(i + 2);
        boolean joined = separator.mark(SEPARATORS)
                || separator.key().equals("h")
                || separator.mark("-,;/") && timeAround(i, i + 3);
        if (!joined || !minute.number() || minute.text().length() != 2 || separator.mark(".,") && decimal(i)) {
            return Optional.empty();
        }
        double cost = separator.mark(".-,;/") ? 0.6 : 0;
        if (separator.mark(".") && datelike(i)) {
            cost += 2;
        }
        return clock(hour.text(), minute.text(), i, seconds(i + 3), cost);
    }

    /** Skips seconds behind the minutes. */
    private int seconds(int at) {
        boolean follows = at + 1 < tokens.size()
                && tokens.get(at).mark(":")
                && tokens.get(at + 1).number()
                && tokens.get(at + 1).text().length() == 2;
        return follows ? at + 2 : at;
    }

    /** {@code 36.6}, {@code 2.500}: no minute. {@code 4.5.26}: part of a date. */
    private boolean decimal(int i) {
        boolean before = i >= 2
                && tokens.get(i - 1).mark("./")
                && tokens.get(i - 1).glued()
                && tokens.get(i - 2).number();
        boolean after = i + 4 < tokens.size()
                && tokens.get(i + 3).mark("./")
                && tokens.get(i + 3).glued()
                && tokens.get(i + 4).number()
                && tokens.get(i + 4).glued();
        return before || after;
    }

    private boolean datelike(int i) {
        int month = Integer.parseInt(tokens.get(i + 2).text());
        return month >= 1 && month <= 12 && tokens.get(i + 2).text().startsWith("0") && !timeAround(i, i + 3);
    }

    private boolean timeAround(int from, int to) {
        boolean before = from > 0
                && List.of("at", "time", "um", "kl", "a las", "godz", "g", "ore", "as")
                        .contains(tokens.get(from - 1).key());
        return before || half(to).isPresent() || to < tokens.size() && unit(tokens.get(to));
    }

    private static boolean unit(Token t) {
        return List.of("h", "hrs", "hr", "hours", "uhr", "uur", "godz").contains(t.key());
    }

    /** Four digits, or three: {@code 0531}, {@code 0737hrs}. */
    private Optional<Found<Clock>> compact(int i) {
        Token t = tokens.get(i);
        if (!t.number() || t.text().length() != 4) {
            return Optional.empty();
        }
        boolean marked = i + 1 < tokens.size() && unit(tokens.get(i + 1))
                || half(i + 1).isPresent()
                || i > 0 && tokens.get(i - 1).key().equals("time");
        double cost = marked ? 0.2 : 1.5;
        return clock(t.text().substring(0, 2), t.text().substring(2), i, i + 1, cost);
    }

    /** {@code 9am}, {@code 10 Uhr}. */
    private Optional<Found<Clock>> hourOnly(int i) {
        Token t = tokens.get(i);
        boolean bare = t.number()
                && t.text().length() <= 2
                && (half(i + 1).isPresent() || i + 1 < tokens.size() && unit(tokens.get(i + 1)));
        boolean inPair =
                i >= 2 && tokens.get(i - 2).number() && tokens.get(i - 1).glued() && t.glued();
        return bare
                        && !inPair
                        && !(i + 2 < tokens.size()
                                && tokens.get(i + 2).number()
                                && tokens.get(i + 1).key().equals("h"))
                ? clock(t.text(), "00", i, i + 1, 1)
                : Optional.empty();
    }

    private Optional<Found<Clock>> clock(String hour, String minute, int from, int to, double cost) {
        int h = Integer.parseInt(hour);
        int m = Integer.parseInt(minute);
        if (h > 23 || m > 59) {
            return Optional.empty();
        }
        Optional<HalfWord> after = half(to);
        boolean own = from > 0 && tokens.get(from - 1).text().codePointAt(0) > 0x2000;
        Optional<HalfWord> before = after.isEmpty() && own ? halfAt(from - 1, 1) : Optional.empty();
        Optional<HalfWord> word = after.or(() -> before);
        int end = after.map(w -> to + w.length()).orElse(to);
        int unitEnd = end < tokens.size() && unit(tokens.get(end)) ? end + 1 : end;
        int start = before.isPresent() ? from - 1 : from;
        boolean known = word.isPresent() || h == 0 || h > 12 || hour.startsWith("0");
        int shown = word.filter(w -> h <= 12)
                .map(w -> h % 12 + (w.afternoon() ? 12 : 0))
                .orElse(h);
        return Optional.of(new Found<>(new Clock(LocalTime.of(shown, m), known), start, unitEnd, cost));
    }

    private record HalfWord(boolean afternoon, int length) {}

    private Optional<HalfWord> half(int at) {
        if (at + 2 < tokens.size()
                && tokens.get(at).text().length() == 1
                && tokens.get(at + 1).mark(".")) {
            Optional<Boolean> dotted = CalendarWords.afternoon(
                    tokens.get(at).key() + tokens.get(at + 2).key());
            if (dotted.isPresent()) {
                int dot = at + 3 < tokens.size() && tokens.get(at + 3).mark(".") ? 4 : 3;
                return Optional.of(new HalfWord(dotted.get(), dot));
            }
        }
        return halfAt(at, 1);
    }

    /** Half-of-day words of some languages are other people's names: those count in small letters only. */
    private static boolean unmistakable(Token t) {
        return List.of("am", "pm", "a", "p").contains(t.key())
                || !Character.isUpperCase(t.text().codePointAt(0));
    }

    private Optional<HalfWord> halfAt(int at, int length) {
        if (at < 0 || at >= tokens.size() || !tokens.get(at).word()) {
            return Optional.empty();
        }
        Token t = tokens.get(at);
        return CalendarWords.afternoon(t.key()).filter(pm -> unmistakable(t)).map(pm -> new HalfWord(pm, length));
    }
}
