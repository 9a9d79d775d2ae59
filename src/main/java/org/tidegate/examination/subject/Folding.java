package org.tidegate.examination.subject;

import com.ibm.icu.text.Normalizer2;
import java.util.Locale;

/** Comparison forms of words: lower case without accents. */
final class Folding {

    private static final Normalizer2 DECOMPOSE = Normalizer2.getNFKDInstance();

    private Folding() {}

    static String fold(String text) {
        StringBuilder out = new StringBuilder(text.length());
        DECOMPOSE
                .normalize(text)
                .codePoints()
                .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
                .forEach(out::appendCodePoint);
        return out.toString()
                .toLowerCase(Locale.ROOT)
                .replace("ł", "l")
                .replace("ø", "o")
                .replace("đ", "d")
                .replace("ı", "i");
    }
}
