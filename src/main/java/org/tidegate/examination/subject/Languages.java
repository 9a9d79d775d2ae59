package org.tidegate.examination.subject;

import java.util.List;

/** The languages whose number words are known, as bits. */
final class Languages {

    static final List<String> ALL = List.of(
            "en", "es", "fr", "de", "pl", "pt", "it", "nl", "da", "nb", "sv", "is", "fi", "ro", "tr", "uk", "ru", "el",
            "lt", "lv", "et", "cs", "sk", "hr", "hu", "bg", "id", "fil", "vi", "zh", "ja", "ko", "ca", "ar", "he", "fa",
            "hi", "th", "sr", "sl", "mk", "be", "ms");

    private Languages() {}

    /** @param names language tags with single spaces */
    static long bits(String names) {
        long bits = 0;
        for (String name : names.split(" ")) {
            int at = ALL.indexOf(name);
            if (at < 0) {
                throw new IllegalArgumentException(name + " is none of the languages with number words");
            }
            bits |= 1L << at;
        }
        return bits;
    }

    static String names(long bits) {
        return String.join(" ", ALL.stream().filter(l -> (bits & bits(l)) != 0).toList());
    }
}
