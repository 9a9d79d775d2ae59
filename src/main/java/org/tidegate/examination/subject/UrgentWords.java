package org.tidegate.examination.subject;

import java.util.List;
import org.tidegate.rules.SubjectRules;

/** Words of urgent symptoms or distress, whole words only. */
public final class UrgentWords {

    private static final Tokenizer TOKENS = new Tokenizer(s -> 0);
    private static final int MOST_CHARS = 200_000;

    private UrgentWords() {}

    /** The phrases of the rules that occur, as the rules write them. */
    public static List<String> find(String text, SubjectRules rules) {
        String words = " " + plain(text) + " ";
        return rules.urgentWords().stream()
                .filter(p -> words.contains(" " + plain(p) + " "))
                .toList();
    }

    private static String plain(String text) {
        StringBuilder words = new StringBuilder();
        TOKENS.tokens(Cleaner.clean(text, MOST_CHARS).text(), MOST_CHARS).stream()
                .filter(Token::isWord)
                .forEach(t -> words.append(words.isEmpty() ? "" : " ").append(t.key()));
        return words.toString();
    }
}
