package org.tidegate.rules;

import java.util.List;
import java.util.Map;

@Doc(
        "Words that subject lines are made of beside names and times; those that CLDR carries (months, weekdays, …) need not be written.")
public record SubjectRules(
        @Doc("Words and phrases of all languages by what they do; case and accents do not matter.")
        Map<WordKind, List<String>> words,

        @Doc("Words of urgent symptoms or distress, any language; a phrase matches whole words.")
        List<String> urgentWords,

        @Doc("Characters of free text up to which a body may be a covering note.")
        int coveringNoteChars) {

    public List<String> words(WordKind kind) {
        return words.getOrDefault(kind, List.of());
    }

    public List<String> resultWords() {
        return words(WordKind.RESULT);
    }
}
