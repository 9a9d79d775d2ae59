package org.tidegate.rules;

import java.util.Locale;
import java.util.regex.Pattern;

/** Words in a row, found whatever their case; never a part of a longer word. */
record Phrase(Pattern pattern) {

    static Phrase of(String words) {
        String quoted = Pattern.quote(words.strip().toLowerCase(Locale.ROOT));
        return new Phrase(Pattern.compile("(?<!\\p{L})" + quoted + "(?!\\p{L})"));
    }

    boolean in(String text) {
        return pattern.matcher(text.toLowerCase(Locale.ROOT)).find();
    }
}
