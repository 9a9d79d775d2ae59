package org.tidegate.examination.linkage;

import java.util.List;
import java.util.Map;

/** Cyrillic to Latin letters in the schemes that stand in passports: ICAO 9303-3 section 6.B and the English (BGN) habit. */
final class Cyrillic {

    private static final String LETTERS = "абвгдежзийклмнопрстуфхцчшщъыьэюяёіїєґў";

    private static final List<String> ICAO = List.of(
            "a", "b", "v", "g", "d", "e", "zh", "z", "i", "i", "k", "l", "m", "n", "o", "p", "r", "s", "t", "u", "f",
            "kh", "ts", "ch", "sh", "shch", "ie", "y", "", "e", "iu", "ia", "e", "i", "i", "ie", "g", "u");

    private static final Map<Character, String> ENGLISH =
            Map.of('й', "y", 'ю', "yu", 'я', "ya", 'ё', "yo", 'ъ', "", 'є', "ye", 'ї', "yi", 'х', "kh");

    /** Ukrainian passports since 2010 (Cabinet resolution 55): г is h, и is y. */
    private static final Map<Character, String> UKRAINIAN = Map.of('г', "h", 'и', "y");

    private Cyrillic() {}

    static boolean isCyrillic(String word) {
        for (int i = 0; i < word.length(); i++) {
            if (word.charAt(i) >= '\u0400' && word.charAt(i) <= '\u04FF') {
                return true;
            }
        }
        return false;
    }

    static List<String> spellings(String lower) {
        return List.of(write(lower, Map.of()), write(lower, ENGLISH), write(lower, UKRAINIAN));
    }

    private static String write(String lower, Map<Character, String> scheme) {
        StringBuilder out = new StringBuilder(lower.length() * 2);
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            int at = LETTERS.indexOf(c);
            String own = scheme.get(c);
            if (own != null) {
                out.append(own);
            } else if (at >= 0) {
                out.append(ICAO.get(at));
            }
        }
        return out.toString();
    }
}
