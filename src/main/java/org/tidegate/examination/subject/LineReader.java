package org.tidegate.examination.subject;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tidegate.finding.SubjectReading;
import org.tidegate.finding.SubjectReading.Source;
import org.tidegate.rules.Rules;

/** Reads one line: candidates of every field, the cheapest covers of the line by them, each resolved against the arrival. */
final class LineReader {

    /** Tokens of a line that are looked at; a person's subject has fewer than forty. */
    static final int MOST_TOKENS = 160;

    private static final int MOST_CHARS = 2_000;
    private static final int MOST_READINGS = 8;
    private static final Comparator<Readings.Draft> BY_COST = Comparator.comparingDouble(Readings.Draft::cost);

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
        List<Readings.Draft> drafts = new ArrayList<>();
        Cover.best(candidates(line, sender, resolver), line.size()).forEach(whole -> drafts.addAll(readings.of(whole)));
        drafts.sort(BY_COST);
        List<Readings.Draft> distinct = new ArrayList<>(MOST_READINGS);
        for (int i = 0; i < drafts.size() && distinct.size() < MOST_READINGS; i++) {
            Readings.Draft next = drafts.get(i);
            if (distinct.stream().noneMatch(next::sameAs)) {
                distinct.add(next);
            }
        }
        return distinct.stream().map(readings::reading).toList();
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
