package org.tidegate.rules;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** A subject is read on locked screens and over shoulders: it says whose letter it is, and no more. */
final class SubjectChecks {

    /** What a subject may be filled with; anything else tells something about a person. */
    private static final Set<String> HARMLESS = Set.of("ref", "service");

    private static final Pattern BETWEEN_WORDS = Pattern.compile("\\PL+");

    private final List<String> resultWords;
    private final Faults faults;

    SubjectChecks(List<String> resultWords, Faults faults) {
        this.resultWords = resultWords;
        this.faults = faults;
    }

    void check(LetterTexts texts) {
        subject(texts, texts.request(), texts.request().subject());
        texts.plain().forEach(l -> subject(texts, l, l.subject()));
        texts.results().forEach(l -> subject(texts, l, l.subject()));
        allAlike(texts);
    }

    private void subject(LetterTexts texts, Object letter, Template subject) {
        Set<String> telling = new TreeSet<>(subject.placeholders());
        telling.removeAll(HARMLESS);
        if (telling.contains("name")) {
            fault(letter, subject, "bears the name", "a name never stands in a subject");
        } else if (!telling.isEmpty()) {
            fault(letter, subject, "bears {" + String.join("}, {", telling) + "}", "only {ref} and {service} may");
        }
        if (tellsResult(texts, subject)) {
            fault(letter, subject, "tells a result", "a result never stands in a subject");
        }
    }

    private boolean tellsResult(LetterTexts texts, Template subject) {
        String lower = subject.text().toLowerCase(Locale.ROOT);
        List<String> words = BETWEEN_WORDS.splitAsStream(lower).toList();
        return resultWords.stream().anyMatch(words::contains)
                || texts.resultWords().all().stream().anyMatch(r -> Phrase.of(r).in(lower));
    }

    /** Where the three differ, the subject alone tells the result. */
    private void allAlike(LetterTexts texts) {
        for (ResultLetter letter : texts.results()) {
            if (!letter.subject().equals(texts.negative().subject())) {
                fault(
                        letter,
                        letter.subject(),
                        "differs from that of the negative letter",
                        "all result letters share one subject, else it tells the result");
            }
        }
    }

    private void fault(Object letter, Template subject, String what, String hint) {
        faults.in(letter, "the subject '" + subject.text() + "' " + what, hint);
    }
}
