package org.tidegate.examination.linkage;

import com.ibm.icu.text.Transliterator;
import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Writes names in plain Latin letters: by the table of ICAO 9303-3 section 6, and with marks simply dropped. */
final class Letters {

    /** Where ICAO 9303-3 section 6.A and the habit of dropping marks part ways: letter to its two-letter form. */
    private static final Map<Character, String> TWO_LETTERS =
            Map.of('ä', "ae", 'ö', "oe", 'ü', "ue", 'ø', "oe", 'å', "aa", 'æ', "ae", 'œ', "oe", 'þ', "th", 'ð', "dh");

    /** Letters that Unicode does not decompose. */
    private static final Map<Character, String> ONE_LETTER = Map.ofEntries(
            Map.entry('ø', "o"),
            Map.entry('æ', "ae"),
            Map.entry('œ', "oe"),
            Map.entry('ß', "ss"),
            Map.entry('ł', "l"),
            Map.entry('đ', "d"),
            Map.entry('ð', "d"),
            Map.entry('þ', "th"),
            Map.entry('ı', "i"),
            Map.entry('ħ', "h"),
            Map.entry('ŋ', "n"),
            Map.entry('ə', "e"));

    /** Hushing letters as English writes their sound: what is left of them abroad. */
    private static final Map<Character, String> HUSHING =
            Map.of('š', "sh", 'č', "ch", 'ž', "zh", 'ż', "zh", 'ş', "sh", 'ș', "sh", 'ç', "ch", 'ț', "ts");

    private static final Transliterator ANY_LATIN = Transliterator.getInstance("Any-Latin; NFD; Latin-ASCII");

    /** The scheme of Greek passports: ELOT 743, taken over by the United Nations (UNGEGN). */
    private static final Transliterator GREEK_LATIN =
            Transliterator.getInstance("Greek-Latin/UNGEGN; NFD; Latin-ASCII");

    private Letters() {}

    /** Lower-case ASCII spellings of one word, the plainest first; empty where it holds no letter. */
    static Set<String> spellings(String word) {
        if (isPlain(word)) {
            return Set.of(word.toLowerCase(Locale.ROOT));
        }
        String lower = Normalizer.normalize(word, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
        Set<String> all = new LinkedHashSet<>();
        add(all, plain(lower));
        add(all, plain(replace(lower, TWO_LETTERS)));
        add(all, plain(replace(lower, HUSHING)));
        if (Cyrillic.isCyrillic(lower)) {
            Cyrillic.spellings(lower).forEach(s -> add(all, s));
        }
        if (isGreek(lower)) {
            add(all, asciiLetters(GREEK_LATIN.transliterate(lower)));
        }
        return all;
    }

    private static boolean isGreek(String word) {
        return word.codePoints().anyMatch(c -> Character.UnicodeScript.of(c) == Character.UnicodeScript.GREEK);
    }

    private static boolean isPlain(String word) {
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            if ((c < 'a' || c > 'z') && (c < 'A' || c > 'Z')) {
                return false;
            }
        }
        return !word.isEmpty();
    }

    private static void add(Set<String> all, String spelling) {
        if (!spelling.isEmpty()) {
            all.add(spelling);
        }
    }

    private static String plain(String lower) {
        String decomposed = Normalizer.normalize(replace(lower, ONE_LETTER), Normalizer.Form.NFD);
        StringBuilder out = new StringBuilder(decomposed.length());
        boolean foreign = false;
        for (int i = 0; i < decomposed.length(); i++) {
            char c = decomposed.charAt(i);
            if (c >= 'a' && c <= 'z') {
                out.append(c);
            } else if (Character.isLetter(c)) {
                foreign = true;
            }
        }
        return foreign ? asciiLetters(ANY_LATIN.transliterate(lower)) : out.toString();
    }

    private static String asciiLetters(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = Character.toLowerCase(text.charAt(i));
            if (c >= 'a' && c <= 'z') {
                out.append(c);
            }
        }
        return out.toString();
    }

    private static String replace(String lower, Map<Character, String> table) {
        StringBuilder out = new StringBuilder(lower.length() + 4);
        for (int i = 0; i < lower.length(); i++) {
            String other = table.get(lower.charAt(i));
            if (other == null) {
                out.append(lower.charAt(i));
            } else {
                out.append(other);
            }
        }
        return out.toString();
    }
}
