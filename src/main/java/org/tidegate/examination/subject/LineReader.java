package org.tidegate.examination.subject;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidegate.examination.subject.TimeFinder.Clock;
import org.tidegate.finding.SubjectReading;
import org.tidegate.finding.SubjectReading.Source;
import org.tidegate.finding.SubjectReading.Span;
import org.tidegate.rules.Rules;

/** Reads one line: candidates for every field, the cheapest combination of them that does not overlap. */
final class LineReader {

    private static final int MOST_READINGS = 6;

    private final ClinicFinder clinics;
    private final NameFinder names;
    private final LineWords words;
    private final ZoneId home;

    LineReader(Rules rules) {
        clinics = new ClinicFinder(rules.clinics());
        names = new NameFinder(rules.subjects());
        words = new LineWords(rules.subjects());
        home = rules.timing().zone();
    }

    /** Readings of the line, best first, at least one. */
    List<SubjectReading> read(String raw, Source source, Sender sender, Arrival arrival) {
        String line = words.withoutPrefixes(raw.replaceAll("(?<![\\p{L}\\d])[oO](\\d[:.h]\\d\\d)", "0$1"));
        List<Token> tokens = Tokenizer.tokens(line);
        List<Found<String>> places = clinics.find(tokens);
        List<Found<ZoneId>> zones = new ZoneFinder(tokens).find();
        List<Found<Clock>> clocks = new ArrayList<>(new TimeFinder(tokens).find());
        clocks.addAll(new SpokenTimes(tokens).find());
        List<Found<LocalDate>> dates = new DateFinder(tokens, arrival.day()).find();
        List<Reading> readings = new ArrayList<>();
        for (Optional<Found<Clock>> clock : options(clocks)) {
            for (Optional<Found<LocalDate>> date : options(dates)) {
                if (clock.isEmpty() || date.isEmpty() || !clock.get().overlaps(date.get())) {
                    readings.add(new Reading(clock, date, zone(zones, clock), arrival, home));
                }
            }
        }
        return readings.stream()
                .flatMap(r -> r.meanings().stream())
                .sorted(Comparator.comparingDouble(Meaning::cost))
                .limit(MOST_READINGS)
                .map(m -> reading(line, tokens, m, places, zones, source, sender))
                .toList();
    }

    private static <T> List<Optional<Found<T>>> options(List<Found<T>> found) {
        List<Optional<Found<T>>> all = new ArrayList<>();
        found.stream().sorted(Comparator.comparingDouble(Found::cost)).limit(8).forEach(f -> all.add(Optional.of(f)));
        all.add(Optional.empty());
        return all;
    }

    /** The zone that stands right behind the time. */
    private static Optional<Found<ZoneId>> zone(List<Found<ZoneId>> zones, Optional<Found<Clock>> clock) {
        return clock.flatMap(c -> zones.stream()
                .filter(z -> z.from() == c.to() || z.from() == c.to() + 1)
                .findFirst());
    }

    private SubjectReading reading(
            String line,
            List<Token> tokens,
            Meaning meaning,
            List<Found<String>> places,
            List<Found<ZoneId>> zones,
            Source source,
            Sender sender) {
        boolean[] used = new boolean[tokens.size()];
        zones.forEach(z -> java.util.Arrays.fill(used, z.from(), z.to(), true));
        List<Span> spans = new ArrayList<>();
        meaning.parts().forEach((field, found) -> mark(field, found, tokens, used, spans));
        Optional<Found<String>> place =
                places.stream().filter(p -> free(p, used)).min(Comparator.comparingDouble(Found::cost));
        place.ifPresent(p -> mark("clinic", p, tokens, used, spans));
        places.stream().filter(p -> free(p, used)).forEach(p -> java.util.Arrays.fill(used, p.from(), p.to(), true));
        Set<String> senderWords = sender.words();
        Optional<Found<String>> name = words.isNotice(line)
                ? Optional.empty()
                : names.find(line, tokens, used, senderWords).stream()
                        .findFirst()
                        .filter(n -> n.cost() < (meaning.time().isPresent() ? 2.6 : 1.2));
        name.ifPresent(n -> mark("name", n, tokens, used, spans));
        Optional<LocalDateTime> time = words.isNotice(line) ? Optional.empty() : meaning.time();
        List<String> problems = new ArrayList<>();
        if (name.isEmpty()) {
            problems.add("no name found");
        }
        if (time.isEmpty()) {
            problems.add("no test time found");
        }
        return new SubjectReading(
                source,
                name.map(Found::value),
                time,
                meaning.statedZone(),
                meaning.dateStated(),
                place.map(Found::value),
                words.reference(tokens, used),
                Optional.empty(),
                Optional.empty(),
                words.claim(tokens),
                meaning.cost() + name.map(Found::cost).orElse(4.0),
                List.copyOf(spans),
                problems);
    }

    private static boolean free(Found<?> found, boolean[] used) {
        for (int i = found.from(); i < found.to(); i++) {
            if (used[i]) {
                return false;
            }
        }
        return true;
    }

    private static void mark(String field, Found<?> found, List<Token> tokens, boolean[] used, List<Span> spans) {
        java.util.Arrays.fill(used, found.from(), found.to(), true);
        spans.add(new Span(
                field,
                tokens.get(found.from()).start(),
                tokens.get(found.to() - 1).end()));
    }
}
