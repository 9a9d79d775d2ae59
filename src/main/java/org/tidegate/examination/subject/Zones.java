package org.tidegate.examination.subject;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.rules.WordKind;

/** Zones that people name beside a time: UTC, CEST, UTC+2, Lagos time, UK. */
final class Zones {

    /** Identifiers: of the hundreds of zones hardly any is ever loaded. */
    private final Map<String, String> words = new HashMap<>();

    private final Map<String, String> places = new HashMap<>();
    private final ZoneId home;

    /** @param home what "local time" means */
    Zones(ZoneId home) {
        this.home = home;
        ZoneTable.abbreviations().forEach((word, id) -> words.put(Fold.key(word), id));
        ZoneTable.places().forEach((word, id) -> places.put(Fold.key(word), id));
    }

    private ZoneId zone(String id) {
        return id.equals("home") ? home : ZoneId.of(id);
    }

    /**
     * @param home whether it is the clinic's own zone
     * @param end behind its last token
     */
    record Found(ZoneId zone, String text, int end, boolean home, double cost) {}

    /** Zones that stand right behind a time, an opening bracket or slash between them or not. */
    List<Found> after(Line line, int at) {
        List<Found> found = new ArrayList<>();
        int start = line.isSign(at, "(") || line.isSign(at, "/") && !line.isNumber(at + 1) ? at + 1 : at;
        if (line.isWord(start) && ZoneTable.SHIP.contains(line.token(start).key())) {
            int offset = timeWordEnd(line, start + 1);
            return after(line, offset == start + 1 ? line.size() : offset);
        }
        if (!line.isWord(start)) {
            return found;
        }
        offset(line, start).or(() -> abbreviation(line, start)).ifPresent(found::add);
        place(line, start).ifPresent(found::add);
        return found;
    }

    private Optional<Found> abbreviation(Line line, int at) {
        String id = words.get(line.token(at).key());
        if (id == null) {
            return Optional.empty();
        }
        boolean capitals = line.token(at).text().equals(line.token(at).text().toUpperCase(java.util.Locale.ROOT));
        return Optional.of(found(line, zone(id), at, timeWordEnd(line, at + 1), capitals ? 0 : 0.2));
    }

    /** UTC+2, GMT-03:00. */
    private Optional<Found> offset(Line line, int at) {
        String key = line.token(at).key();
        boolean base = key.equals("utc") || key.equals("gmt");
        if (!base
                || !line.isSign(at + 1, "+-−")
                || !line.isNumber(at + 2)
                || line.token(at + 2).number() > 14
                || line.meaning(at + 3).month() > 0) {
            return Optional.empty();
        }
        int sign = line.isSign(at + 1, "+") ? 1 : -1;
        boolean minutes = line.isSign(at + 3, ":")
                && line.isNumber(at + 4)
                && line.token(at + 4).number() < 60;
        int part = minutes ? line.token(at + 4).number() : 0;
        ZoneOffset offset = ZoneOffset.ofTotalSeconds(sign * (line.token(at + 2).number() * 3600 + part * 60));
        return Optional.of(found(line, offset, at, minutes ? at + 5 : at + 3, 0));
    }

    /** A city or country with or without the word "time"; a bare one only where it names the clinic's own zone. */
    private Optional<Found> place(Line line, int at) {
        boolean by = ZoneTable.BY_WORDS.contains(line.token(at).key()) && line.isWord(at + 1);
        int first = by ? at + 1 : at;
        boolean before = line.is(first, WordKind.TIME_CUE)
                || line.is(first, WordKind.HOUR_UNIT)
                || ZoneTable.TIME_WORDS.contains(line.token(first).key());
        int from = before && line.isWord(first + 1) ? first + 1 : first;
        from = before && line.is(from, WordKind.OF) && line.isWord(from + 1) ? from + 1 : from;
        for (int length = 2; length >= 1; length--) {
            if (!line.has(from + length - 1)) {
                continue;
            }
            String id = places.get(key(line, from, length));
            if (id == null) {
                continue;
            }
            ZoneId zone = zone(id);
            int end = timeWordEnd(line, from + length);
            boolean said = from > at || end > from + length;
            if (said || zone.equals(home)) {
                return Optional.of(found(line, zone, at, end, 0));
            }
        }
        return Optional.empty();
    }

    private static String key(Line line, int from, int length) {
        return length == 1
                ? line.token(from).key()
                : line.token(from).key() + " " + line.token(from + 1).key();
    }

    private static int timeWordEnd(Line line, int at) {
        boolean time =
                line.isWord(at) && ZoneTable.TIME_WORDS.contains(line.token(at).key());
        int end = time ? at + 1 : at;
        return line.isSign(end, ")") ? end + 1 : end;
    }

    private Found found(Line line, ZoneId zone, int at, int end, double cost) {
        return new Found(zone, line.text(at, end), end, zone.equals(home), cost);
    }
}
