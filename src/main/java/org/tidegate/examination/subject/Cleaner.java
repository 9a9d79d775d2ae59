package org.tidegate.examination.subject;

import java.text.Normalizer;

/**
 * Makes typed text uniform, one character cluster at a time: compatibility forms (NFKC), foreign digits, invisible and direction
 * marks, emoji. What stands between words is kept, for it separates.
 */
final class Cleaner {

    /** Emoji and dingbats become this: a separator that is no letter of anything. */
    static final char BULLET = '•';

    /** Marks on one letter (UAX 15, Stream-Safe Text Format: 30); sorting more of them costs the square of their number. */
    private static final int MOST_MARKS = 30;

    private Cleaner() {}

    static TracedText clean(String original, int limit) {
        return uniform(Mojibake.repair(EncodedWords.decode(TracedText.of(original, limit))));
    }

    private static TracedText uniform(TracedText in) {
        TracedText.Rewrite out = new TracedText.Rewrite(in);
        String s = in.text();
        int i = 0;
        while (i < s.length()) {
            int c = s.codePointAt(i);
            int end = i + Character.charCount(c);
            if (c < 0x80) {
                out.append(c < 0x20 || c == 0x7F || c == '_' ? ' ' : (char) c, i);
            } else {
                end = clusterEnd(s, end);
                append(out, s.substring(i, end), c, i);
            }
            i = end;
        }
        return out.done();
    }

    private static int clusterEnd(String s, int from) {
        int i = from;
        while (i < s.length()
                && i - from < MOST_MARKS
                && Character.getType(s.codePointAt(i)) == Character.NON_SPACING_MARK) {
            i += Character.charCount(s.codePointAt(i));
        }
        return i;
    }

    private static void append(TracedText.Rewrite out, String cluster, int first, int at) {
        switch (Character.getType(first)) {
            case Character.FORMAT, Character.NON_SPACING_MARK, Character.ENCLOSING_MARK -> {}
            case Character.DECIMAL_DIGIT_NUMBER -> out.append((char) ('0' + Character.digit(first, 10)), at);
            case Character.OTHER_SYMBOL, Character.MODIFIER_SYMBOL, Character.PRIVATE_USE ->
                out.append(symbol(first), at);
            case Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.CONTROL,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SPACE_SEPARATOR -> out.append(' ', at);
            default -> out.append(Normalizer.normalize(cluster, Normalizer.Form.NFKC), at);
        }
    }

    private static char symbol(int c) {
        return switch (c) {
            case 0xB0 -> '°';
            case 0xB4, 0x60 -> '\'';
            default -> BULLET;
        };
    }
}
