package org.tidegate.examination.subject;

import java.time.ZoneId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidegate.finding.SubjectReading;
import org.tidegate.finding.SubjectReading.Source;
import org.tidegate.rules.Rules;

/** Reads one line: candidates of every field, the cheapest covers of the line by them, each resolved against the arrival. */
final class LineReader {

    /** Tokens of a line that are looked at; a person's subject has fewer than forty. */
    static final int MOST_TOKENS = 160;

    private static final int MOST_CHARS = 2_000;
    private static final int MOST_READINGS = 8;

    private final Lexicon lexicon;
    private final Tokenizer tokenizer;
    private final List<Finder> finders;
    private final ZoneId home;

    LineReader(Rules rules) {
        lexicon = Vocabulary.of(rules);
        tokenizer = new Tokenizer(lexicon::knownPrefix);
        home = rules.timing().zone();
        finders = List.of(
                new WordFinder(),
                new ClinicFinder(rules.clinics()),
                new TimeFinder(new Zones(home)),
                new SpokenTimes(),
                new DateFinder(),
                new WordDateFinder(new MonthSpelling(lexicon.months())),
                new CodeFinder());
    }

    Tokenizer tokenizer() {
        return tokenizer;
    }

    /** Readings of the line, best first, at least one. */
    List<SubjectReading> read(String raw, Source source, Sender sender, Resolver resolver) {
        TracedText clean = Cleaner.clean(raw, MOST_CHARS);
        List<Token> tokens = tokenizer.tokens(clean.text(), MOST_TOKENS);
        Line line = new Line(clean, tokens, lexicon);
        boolean cut = raw.length() > MOST_CHARS || tokens.size() == MOST_TOKENS;
        Readings readings = new Readings(line, source, sender, resolver, cut);
        Map<List<Object>, SubjectReading> distinct = new LinkedHashMap<>();
        Cover.best(candidates(line, sender, resolver), line.size()).stream()
                .flatMap(whole -> readings.of(whole).stream())
                .sorted(Comparator.comparingDouble(SubjectReading::cost))
                .forEach(r -> distinct.putIfAbsent(List.of(r.name(), r.testTime(), r.clinic()), r));
        return distinct.values().stream().limit(MOST_READINGS).toList();
    }

    private Candidates candidates(Line line, Sender sender, Resolver resolver) {
        Candidates out = new Candidates(line.size());
        for (int i = 0; i < line.size(); i++) {
            for (Finder finder : finders) {
                finder.find(line, i, out);
            }
            BirthFinder.find(line, i, resolver.arrival().getYear(), out);
        }
        NameFinder names = new NameFinder(sender);
        for (int i = 0; i < line.size(); i++) {
            names.find(line, i, out);
        }
        return out;
    }
}
