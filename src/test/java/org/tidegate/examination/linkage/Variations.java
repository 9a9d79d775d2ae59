package org.tidegate.examination.linkage;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.tidegate.booking.Appointment;
import org.tidegate.booking.TestRecord;

/** What the participant of a booked test might send: seeded, so that every run sends the same. */
final class Variations {

    private static final ZoneId ZONE = ZoneId.of("Europe/London");

    private final Random random;

    Variations(long seed) {
        this.random = new Random(seed);
    }

    Map<String, Statement> of(TestRecord test) {
        Appointment a = test.appointment();
        String given = a.givenName();
        String family = a.familyName();
        String first = given.split("[ -]")[0];
        Optional<String> own = a.email();
        Optional<String> other = Optional.of("someone.else" + random.nextInt(1000) + "@example.invalid");
        Map<String, Statement> all = new LinkedHashMap<>();
        all.put("full name, own address", say(a, given + " " + family, own));
        all.put("full name, other address", say(a, given + " " + family, other));
        all.put("family first, plain letters, own address", say(a, plain(family + " " + given), own));
        all.put("family first, plain letters, other address", say(a, plain(family + " " + given), other));
        all.put("first words, own address", say(a, first + " " + family.split("[ -]")[0], own));
        all.put("first words, other address", say(a, first + " " + family.split("[ -]")[0], other));
        all.put("initial, own address", say(a, given.charAt(0) + ". " + family, own));
        all.put("initial, other address", say(a, given.charAt(0) + " " + family, other));
        all.put("typo, own address", say(a, given + " " + slip(family), own));
        all.put("typo, other address", say(a, given + " " + slip(family), other));
        all.put("two typos, own address", say(a, slip(given) + " " + slip(family), own));
        all.put("given only, own address", say(a, first, own));
        all.put("given only, other address", say(a, first, other));
        all.put("family only, own address", say(a, family, own));
        all.put("no name, own address", say(a, null, own));
        return all;
    }

    /** The same words a day later or earlier, when the participant had no test. */
    Map<String, Statement> onAnotherDay(TestRecord test, int days) {
        Map<String, Statement> moved = new LinkedHashMap<>();
        of(test).forEach((kind, s) -> moved.put(
                kind,
                new Statement(
                        s.readings().stream()
                                .map(r -> Readings.of(r.name(), r.testTime().map(t -> t.plusDays(days)), r.clinic()))
                                .toList(),
                        s.fromDisplayName(),
                        s.fromAddress(),
                        s.arrived().plusSeconds(86_400L * days))));
        return moved;
    }

    private Statement say(Appointment a, @Nullable String name, Optional<String> from) {
        LocalDateTime start = a.slotStart().atZoneSameInstant(ZONE).toLocalDateTime();
        LocalDateTime tested = start.plusMinutes(random.nextInt(21) - 1);
        Instant arrived = tested.atZone(ZONE).toInstant().plusSeconds(60L * (23 + random.nextInt(20)));
        Optional<LocalDateTime> stated = name == null ? Optional.empty() : Optional.of(tested);
        return new Statement(
                List.of(Readings.of(Optional.ofNullable(name), stated, Optional.of(a.clinic()))),
                Optional.empty(),
                from,
                arrived);
    }

    private static String plain(String name) {
        return Letters.spellings(name.replace(' ', 'Q').replace('-', 'Q'))
                .iterator()
                .next()
                .replace("q", " ");
    }

    private String slip(String name) {
        if (name.length() < 4) {
            return name;
        }
        int at = 1 + random.nextInt(name.length() - 2);
        StringBuilder out = new StringBuilder(name);
        switch (random.nextInt(3)) {
            case 0 -> out.deleteCharAt(at);
            case 1 -> out.insert(at, name.charAt(at));
            default -> {
                out.setCharAt(at, name.charAt(at + 1));
                out.setCharAt(at + 1, name.charAt(at));
            }
        }
        return out.toString();
    }
}
