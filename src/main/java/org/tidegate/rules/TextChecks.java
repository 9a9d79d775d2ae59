package org.tidegate.rules;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.tidegate.finding.DiscrepancyCode;

/** What letters must never or always do. */
final class TextChecks {

    private final Rules rules;
    private final Faults faults;

    private TextChecks(Rules rules, Faults faults) {
        this.rules = rules;
        this.faults = faults;
    }

    static void check(Rules rules, Faults faults) {
        TextChecks checks = new TextChecks(rules, faults);
        if (rules.texts().byLanguage().isEmpty()) {
            faults.file("service.yaml", "there is no language", "languages: [en]");
        }
        rules.texts().byLanguage().values().forEach(checks::language);
    }

    private void language(LetterTexts texts) {
        everyDiscrepancyHasWords(texts);
        for (Template subject : subjects(texts)) {
            subject(texts, subject);
        }
    }

    private void everyDiscrepancyHasWords(LetterTexts texts) {
        Set<DiscrepancyCode> missing = EnumSet.allOf(DiscrepancyCode.class);
        missing.remove(DiscrepancyCode.NOT_A_SUBMISSION); // never answered
        missing.removeAll(texts.discrepancies().keySet());
        missing.forEach(c -> faults.in(texts, "no wording for " + c.code(), "add it under discrepancies"));
    }

    private static List<Template> subjects(LetterTexts t) {
        return List.of(
                t.acknowledgement().subject(),
                t.request().subject(),
                t.reminder().subject(),
                t.expired().subject(),
                t.voided().subject(),
                t.repeat().subject(),
                t.negative().subject(),
                t.positive().subject(),
                t.invalid().subject(),
                t.withdrawn().subject());
    }

    /** A subject is read on locked screens and over shoulders. */
    private void subject(LetterTexts texts, Template subject) {
        if (subject.placeholders().contains("name")) {
            faults.in(texts, "the subject '" + subject.text() + "' bears the name", "a name never stands in a subject");
        }
        List<String> words = Pattern.compile("\\PL+")
                .splitAsStream(subject.text().toLowerCase(Locale.ROOT))
                .toList();
        for (String result : rules.subjects().resultWords()) {
            if (words.contains(result)) {
                faults.in(
                        texts,
                        "the subject '" + subject.text() + "' tells a result",
                        "a result never stands in a subject");
            }
        }
    }
}
