package org.tidegate.examination.linkage;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Keys under which the ways that languages write one sound fall together: Tchernychkova and Chernyshkova, Jossifenko and
 * Iosifenko, Haddadine and Haddadin. Letters that languages read differently (j, ch) give more than one key.
 */
final class SoundKey {

    /** Longer patterns first; S stands for any hushing sound. */
    private static final String[][] SAME_SOUND = {
        {"schtsch", "S"},
        {"chtch", "S"},
        {"shch", "S"},
        {"szcz", "S"},
        {"tsch", "S"},
        {"dsch", "S"},
        {"tch", "S"},
        {"sch", "S"},
        {"dzh", "S"},
        {"tsh", "S"},
        {"cz", "S"},
        {"sz", "S"},
        {"sh", "S"},
        {"zh", "S"},
        {"kh", "h"},
        {"ph", "f"},
        {"th", "t"},
        {"dh", "d"},
        {"gh", "g"},
        {"ck", "k"},
        {"qu", "k"},
        {"gue", "ge"},
        {"gui", "gi"},
        {"ts", "s"},
        {"tz", "s"},
        {"ce", "se"},
        {"ci", "si"},
        {"cy", "si"},
        {"ou", "u"},
        {"oo", "u"},
        {"ee", "i"},
        {"x", "ks"},
        {"q", "k"},
        {"c", "k"},
        {"w", "v"},
        {"z", "s"},
        {"y", "i"},
        {"ii", "i"}
    };

    /** Russian writes ё as е: Vorobeva, Worobjowa; Petr, Pyotr. */
    private static final Pattern IOTATED_O = Pattern.compile("(?<=[b-df-hk-np-tv-xz])[jy]o");

    /** The Slavic c: Gnatiszinec, Ljachoweckaja, Cwetajkin. */
    private static final Pattern HISSING_C = Pattern.compile("^c(?=[vw])|(?<=[ei])c(?=$|k[aiy])");

    /** Where a surname ends so, one letter is g to Russians and h to Ukrainians: Gritsenjuk, Hrytseniuk. */
    private static final Pattern SLAVIC_ENDING = Pattern.compile(
            "(?:enko|[iuy]k|e(?:ts|[tc]z|z)|[eo]va?|[eo]wa?|off|sk[iy][iyj]?|ska(?:ya|ja)?|nin|[iy]ch)$");

    private SoundKey() {}

    static Set<String> keys(Set<String> spellings) {
        Set<String> keys = new LinkedHashSet<>();
        for (String s : spellings) {
            addKeys(s, keys);
            if (s.contains("jo") || s.contains("yo")) {
                addKeys(IOTATED_O.matcher(s).replaceAll("e"), keys);
            }
            String hissing = s.indexOf('c') < 0 ? s : HISSING_C.matcher(s).replaceAll("ts");
            if (!hissing.equals(s)) {
                addKeys(hissing, keys);
            }
            if (hissing.indexOf('g') >= 0 && SLAVIC_ENDING.matcher(hissing).find()) {
                addKeys(hissing.replace("gh", "h").replace('g', 'h'), keys);
            }
        }
        return keys;
    }

    private static void addKeys(String spelling, Set<String> keys) {
        for (String j : spelling.indexOf('j') < 0 ? new String[] {"i"} : new String[] {"i", "S"}) {
            String word = spelling.replace("j", j);
            if (word.contains("ch")) {
                keys.add(key(word.replace("ch", "h")));
            }
            keys.add(key(word.replace("sch", "S").replace("tch", "S").replace("ch", "S")));
        }
    }

    private static String key(String word) {
        String w = word;
        for (String[] rule : SAME_SOUND) {
            w = w.replace(rule[0], rule[1]);
        }
        w = w.replace("Sea", "Sa").replace("Seo", "So");
        StringBuilder out = new StringBuilder(w.length());
        for (int i = 0; i < w.length(); i++) {
            char c = w.charAt(i);
            boolean doubled = out.length() > 0 && out.charAt(out.length() - 1) == c;
            boolean glide = c == 'i' && (vowelAt(w, i - 1) || vowelAt(w, i + 1));
            boolean mute = c == 'h' && i > 0;
            if (!doubled && !glide && !mute) {
                out.append(c);
            }
        }
        int last = out.length() - 1;
        if (last > 2 && out.charAt(last) == 'e') {
            out.setLength(last);
        }
        return out.toString();
    }

    private static boolean vowelAt(String w, int i) {
        return i >= 0 && i < w.length() && "aeou".indexOf(w.charAt(i)) >= 0;
    }

    /** The consonants of a key: what is left where vowels are not to be relied on. */
    static String consonants(String key) {
        StringBuilder out = new StringBuilder(key.length());
        for (int i = 0; i < key.length(); i++) {
            if ("aeiou".indexOf(key.charAt(i)) < 0) {
                out.append(key.charAt(i));
            }
        }
        return out.toString();
    }
}
