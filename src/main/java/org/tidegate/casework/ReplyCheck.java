package org.tidegate.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tidegate.rules.LetterTexts;
import org.tidegate.rules.Rules;

/** Whether a text that a person edited may go out: no holes, and nothing cut out that every letter must carry. */
final class ReplyCheck {

    private static final int LONGEST = 20_000;

    private final Rules rules;

    ReplyCheck(Rules rules) {
        this.rules = rules;
    }

    List<String> problems(Replying.Edited edited, Matter matter) {
        List<String> problems = new ArrayList<>();
        String text = edited.text();
        if (text.isBlank() || text.length() > LONGEST) {
            problems.add("A letter has between 1 and " + LONGEST + " characters.");
        }
        if (text.indexOf('{') >= 0 || text.indexOf('}') >= 0) {
            problems.add("A placeholder is not filled in: look for { and }.");
        }
        LetterTexts texts = rules.texts().forLanguage(edited.language());
        Map<String, String> values = LetterValues.of(matter, rules);
        for (String block : LetterSheet.frame(texts, values)) {
            if (!flat(text).contains(flat(block))) {
                problems.add("Every letter must carry: “" + block + "”");
            }
        }
        return problems;
    }

    /** Out of the rules, never edited: a subject is read on locked screens. */
    String subject(Replying.Edited edited, Matter matter) {
        return rules.texts().forLanguage(edited.language()).request().subject().fill(LetterValues.of(matter, rules));
    }

    private static String flat(String s) {
        return s.replaceAll("\\s+", " ").strip();
    }
}
