package org.tidegate.examination.subject;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A phrase of the open sets with the moment that it means: {@code duckling-datetime.tsv} (facebook/duckling, BSD-3-Clause) and
 * {@code dateparser-absolute.tsv} (scrapinghub/dateparser, BSD-3-Clause) in {@code ../shared/data/linkage/date-phrases}.
 *
 * @param dayOnly no time of day is meant
 */
record DatePhrase(String language, String text, LocalDateTime reference, LocalDateTime meant, boolean dayOnly) {

    private static final LocalDateTime DUCKLING = LocalDateTime.parse("2013-02-12T04:30:00");
    private static final LocalDateTime DATEPARSER = LocalDateTime.parse("2012-11-13T12:00:00");

    /** What nobody states of a test that he has done: a count from now, days to come, the third Tuesday of a month, another zone. */
    private static final Pattern NO_TEST = Pattern.compile(
            "(?iU)\\b(in|from now|ago|weeks?|next|last|now|moment|this time|atm|first|second|third|day in|tomorrows?|approximately|ish"
                    + "|vor \\w+ (tag|woche|jahr|stunde|minute|monat)\\w*|vor \\d+ tagen|letzte\\w*|nächste\\w*|dieser|jetzt|gerade|morgen|woche|über\\w+"
                    + "|dernier|dernière|prochaine?|semaine|maintenant|demain|dans|il y a|après-demain|tout de suite|instant"
                    + "|pasado|pasada|próximo|proximo|semana|ahora|ahorita|ya|momento|cuanto|en|hace|antes"
                    + "|agora|amanhã|amanha|próxima|daqui|faz|em|passad[oa]|atrás|há"
                    + "|teraz|jutro|chwili|momencie|temu|za (minut|sekund|jedn|około|jakieś|jeszcze|dwa|kilka)\\w*|przez|od teraz|od dziś|tygodni\\w*"
                    + "|poprzedni\\w*|ostatni\\w*|nast[eę]pn\\w*|w (sekund|minut|godzin|pi[eę]tnaście|kilka|przeci|jeden|\\d+)\\w*|ten|ta|tym|kolejn\\w*"
                    + "|adesso|ora|domani|fra|tra|scors[oa]|prossim[oa]|settimana|fa|ultim[oa]"
                    + "|nu|over|geleden|volgende?|vorige|deze|week|afgelopen|laatste|eerste|tweede|derde"
                    + "|CET|GMT|UTC|EST|PST)\\b|(trzeci|pierwsz|drug)\\w+ \\w+ (we?|września|października)");

    private static final Set<String> OF_DAYS = Set.of("Day", "Hour", "Minute", "Second");

    static Stream<DatePhrase> all(Path folder) throws IOException {
        return Stream.concat(duckling(folder), dateparser(folder))
                .filter(DatePhrase::applicable)
                .distinct();
    }

    private static Stream<DatePhrase> duckling(Path folder) throws IOException {
        return rows(folder.resolve("duckling-datetime.tsv"))
                .filter(r -> OF_DAYS.contains(r.get(2)))
                .map(r -> new DatePhrase(
                        r.get(0),
                        r.get(3),
                        DUCKLING,
                        LocalDateTime.parse(r.get(1)),
                        r.get(2).equals("Day")));
    }

    private static Stream<DatePhrase> dateparser(Path folder) throws IOException {
        return rows(folder.resolve("dateparser-absolute.tsv"))
                .filter(r -> r.get(0).equals("test_dates_parsing")
                        && (r.size() < 5 || r.get(4).isBlank()))
                .filter(r -> r.get(1).endsWith(" dates"))
                .map(r -> {
                    LocalDateTime meant = LocalDateTime.parse(r.get(3));
                    boolean midnight = meant.toLocalTime().toSecondOfDay() == 0;
                    return new DatePhrase(r.get(1).replace(" dates", ""), r.get(2), DATEPARSER, meant, midnight);
                });
    }

    private static Stream<List<String>> rows(Path file) throws IOException {
        return Files.readAllLines(file).stream().skip(1).map(l -> List.of(l.split("\t", -1)));
    }

    /** States a day or a time of day, no further ahead than a slip would be, or with its year. */
    private boolean applicable() {
        boolean near = !meant.toLocalDate().isAfter(reference.toLocalDate().plusDays(1))
                && meant.isAfter(reference.minusDays(8));
        return (near || dated()) && !NO_TEST.matcher(text).find();
    }

    private boolean dated() {
        return text.contains(String.valueOf(meant.getYear()));
    }

    /** As a subject line says it: behind an invented name, and with a time where the phrase has none. */
    String subject() {
        return "Kirsten Bain, " + text + (dayOnly ? " 12:00" : "");
    }

    /** Wall time that the subject says. */
    LocalDateTime testTime() {
        return dayOnly ? meant.toLocalDate().atTime(12, 0) : meant.withSecond(0).withNano(0);
    }

    /** People write shortly after the test. */
    LocalDateTime arrival() {
        LocalDateTime soon = testTime().plusMinutes(30);
        return dated() || soon.isAfter(reference) ? soon : reference;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s '%s' at %s means %s", language, text, arrival(), testTime());
    }
}
