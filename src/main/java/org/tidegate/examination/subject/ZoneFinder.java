package org.tidegate.examination.subject;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Zones that people name beside a time: abbreviations in use in Europe and on ships, and {@code Lagos time}. */
final class ZoneFinder {

    /** Abbreviations of fixed meaning; IST and the like mean several zones and are left out. */
    private static final Map<String, String> ABBREVIATIONS = Map.ofEntries(
            Map.entry("utc", "Z"),
            Map.entry("gmt", "Z"),
            Map.entry("zulu", "Z"),
            Map.entry("cet", "+01:00"),
            Map.entry("cest", "+02:00"),
            Map.entry("mez", "+01:00"),
            Map.entry("mesz", "+02:00"),
            Map.entry("eet", "+02:00"),
            Map.entry("eest", "+03:00"),
            Map.entry("bst", "+01:00"),
            Map.entry("wet", "Z"),
            Map.entry("west", "+01:00"),
            Map.entry("msk", "+03:00"),
            Map.entry("wat", "+01:00"),
            Map.entry("cat", "+02:00"),
            Map.entry("eat", "+03:00"),
            Map.entry("pht", "+08:00"),
            Map.entry("est", "-05:00"),
            Map.entry("edt", "-04:00"));

    private static final Map<String, String> CITIES = new HashMap<>();

    static {
        for (String id : ZoneId.getAvailableZoneIds().stream().sorted().toList()) {
            int slash = id.lastIndexOf('/');
            if (slash > 0 && !id.startsWith("Etc") && !id.startsWith("System")) {
                CITIES.putIfAbsent(Folding.fold(id.substring(slash + 1)).replace('_', ' '), id);
            }
        }
    }

    private final List<Token> tokens;

    ZoneFinder(List<Token> tokens) {
        this.tokens = tokens;
    }

    /** A zone word; the value is an offset or a zone name. */
    List<Found<ZoneId>> find() {
        List<Found<ZoneId>> found = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            int at = i;
            Optional<String> known =
                    Optional.ofNullable(ABBREVIATIONS.get(tokens.get(i).key())).filter(z -> behindTime(at));
            known.ifPresent(z -> found.add(new Found<>(ZoneId.of(z), at, at + 1, 0)));
            boolean timeWord = i + 1 < tokens.size() && tokens.get(i + 1).key().equals("time");
            if (timeWord && CITIES.containsKey(tokens.get(i).key())) {
                found.add(new Found<>(ZoneId.of(CITIES.get(tokens.get(i).key())), i, i + 2, 0));
            } else if (List.of("uk", "british", "london").contains(tokens.get(i).key())
                    && (behindTime(i) || timeWord)) {
                found.add(new Found<>(ZoneId.of("Europe/London"), i, timeWord ? i + 2 : i + 1, 0));
            }
        }
        return found;
    }

    private boolean behindTime(int i) {
        return i > 0
                && (tokens.get(i - 1).number()
                        || CalendarWords.afternoon(tokens.get(i - 1).key()).isPresent()
                        || tokens.get(i - 1).mark("(")
                        || List.of("h", "hrs").contains(tokens.get(i - 1).key()));
    }
}
