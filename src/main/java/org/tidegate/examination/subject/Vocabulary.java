package org.tidegate.examination.subject;

import java.util.List;
import org.tidegate.rules.Clinic;
import org.tidegate.rules.Rules;
import org.tidegate.rules.SubjectRules;
import org.tidegate.rules.WordKind;

/** The lexicon of one set of rules: their words, their clinics, and what CLDR knows of every language. */
final class Vocabulary {

    private static final int BEFORE_NOON = 0x000FFF;
    private static final int FROM_NOON = 0xFFF000;

    private Vocabulary() {}

    static Lexicon of(Rules rules) {
        LexiconBuilder lexicon = new LexiconBuilder();
        fromRules(lexicon, rules.subjects());
        rules.clinics().forEach(c -> clinic(lexicon, c));
        CldrTable.addTo(lexicon);
        CldrTable.addEverydayTo(lexicon);
        return lexicon.done();
    }

    private static void fromRules(LexiconBuilder lexicon, SubjectRules rules) {
        for (WordKind kind : WordKind.values()) {
            lexicon.kinds(kind, rules.words(kind));
        }
        rules.words(WordKind.TODAY).forEach(w -> lexicon.day(w, 0));
        rules.words(WordKind.YESTERDAY).forEach(w -> lexicon.day(w, -1));
        rules.words(WordKind.MORNING).forEach(w -> lexicon.hours(w, BEFORE_NOON));
        rules.words(WordKind.EVENING).forEach(w -> lexicon.hours(w, FROM_NOON));
    }

    private static void clinic(LexiconBuilder lexicon, Clinic clinic) {
        lexicon.clinic(clinic.code(), clinic.code()).clinic(clinic.name(), clinic.code());
        List<String> aliases = clinic.aliases();
        aliases.forEach(a -> lexicon.clinic(a, clinic.code()));
    }
}
