package org.tidegate.examination.subject;

import java.util.List;
import java.util.stream.Collectors;
import org.tidegate.rules.SubjectRules;

/** Words of urgent symptoms or distress, whole words only. */
public final class UrgentWords {

    private UrgentWords() {}

    /** The phrases of the rules that occur, as the rules write them. */
    public static List<String> find(String text, SubjectRules rules) {
        String words = " " + plain(text) + " ";
        return rules.urgentWords().stream()
                .filter(p -> words.contains(" " + plain(p) + " "))
                .toList();
    }

    private static String plain(String text) {
        return Tokenizer.words(text).stream()
                .map(Token::key)
                .collect(Collectors.joining(" "))
                .replace("’", "'");
    }
}
