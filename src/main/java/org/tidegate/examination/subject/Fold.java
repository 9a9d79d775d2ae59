package org.tidegate.examination.subject;

import java.text.Normalizer;
import java.util.Locale;

/** Words without case and accents: the key by which they are looked up and compared. */
final class Fold {

    private Fold() {}

    static String key(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        if (lower.chars().allMatch(c -> c < 0x80)) {
            return lower;
        }
        String decomposed = Normalizer.normalize(lower, Normalizer.Form.NFKD);
        StringBuilder out = new StringBuilder(decomposed.length());
        decomposed.codePoints().forEach(c -> append(out, c));
        return out.toString();
    }

    private static void append(StringBuilder out, int c) {
        switch (c) {
            case 'ß' -> out.append("ss");
            case 'æ' -> out.append("ae");
            case 'œ' -> out.append("oe");
            case 'þ' -> out.append("th");
            case 'ø' -> out.append('o');
            case 'ł' -> out.append('l');
            case 'đ', 'ð' -> out.append('d');
            case 'ı' -> out.append('i');
            case 'ς' -> out.append('σ');
            case '’', 'ʼ', 'ʹ', '‘' -> out.append('\'');
            default -> {
                if (!droppedMark(c)) {
                    out.appendCodePoint(c);
                }
            }
        }
    }

    /** Accents of Latin, Greek and Cyrillic, points of Hebrew and Arabic; vowel signs of other scripts are letters. */
    private static boolean droppedMark(int c) {
        return (c >= 0x300 && c <= 0x36F) || (c >= 0x591 && c <= 0x5C7) || (c >= 0x64B && c <= 0x65F);
    }
}
