package org.tidegate.examination.subject;

import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Names of zones: abbreviations and adjectives from a table of our own, cities from the IANA time zone database. */
final class ZoneTable {

    /** Follow the place: Lagos time, Oslo tid. */
    static final Set<String> TIME_WORDS = Set.of(
            "time",
            "tid",
            "tijd",
            "zeit",
            "timen",
            "tiden",
            "tima",
            "saati",
            "saatiyle",
            "laikas",
            "laiku",
            "czasu",
            "времени",
            "время",
            "часу",
            "часом");

    /** Whose time an offset tells: ship's time UTC+2. */
    static final Set<String> SHIP = Set.of("ship", "ships", "ship's", "vessel", "board");

    /** Precede it, folded: по Москве, wg czasu polskiego, að íslenskum tíma. */
    static final Set<String> BY_WORDS = Set.of("по", "за", "wg", "nach", "pagal", "ad", "dupa");

    /** Parts of a country there, of a pier's name here. */
    private static final Set<String> DIRECTIONS = Set.of("North", "South", "West");

    private ZoneTable() {}

    static Map<String, String> abbreviations() {
        return part("abbreviation ");
    }

    static Map<String, String> places() {
        Map<String, String> places = new LinkedHashMap<>();
        for (String id : new TreeSet<>(ZoneId.getAvailableZoneIds())) {
            int slash = id.lastIndexOf('/');
            boolean place = slash > 0 && !id.startsWith("Etc/") && !id.startsWith("System");
            if (place && !DIRECTIONS.contains(id.substring(slash + 1))) {
                places.put(id.substring(slash + 1).replace('_', ' '), id);
            }
        }
        places.putAll(part("place "));
        return places;
    }

    private static Map<String, String> part(String kind) {
        Map<String, String> part = new LinkedHashMap<>();
        for (Resources.Row row : Resources.rows("zones.txt")) {
            if (row.key().startsWith(kind)) {
                part.put(row.key().substring(kind.length()), row.value());
            }
        }
        return part;
    }
}
