package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Cuts cleaned text into tokens; letters and digits part company, unspaced scripts are cut at the words that the lexicon knows. */
final class Tokenizer {

    private static final int SHORTEST_CUT = 3;

    private final ToIntFunction<String> knownPrefix;

    /** @param knownPrefix length of the longest known word that an unspaced text starts with, 0 for none */
    Tokenizer(ToIntFunction<String> knownPrefix) {
        this.knownPrefix = knownPrefix;
    }

    /** At most {@code limit} tokens. */
    List<Token> tokens(String s, int limit) {
        List<Token> tokens = new ArrayList<>();
        int i = 0;
        while (i < s.length() && tokens.size() < limit) {
            char c = s.charAt(i);
            if (c == ' ') {
                i++;
                continue;
            }
            boolean glued = i > 0 && s.charAt(i - 1) != ' ';
            int end = end(s, i);
            tokens.add(token(s, i, end, glued));
            i = end;
        }
        return tokens;
    }

    private int end(String s, int i) {
        int slip = DigitSlips.end(s, i);
        if (slip > i) {
            return slip;
        }
        int c = s.codePointAt(i);
        if (Character.isDigit(c)) {
            return runEnd(s, i);
        }
        if (unspaced(c)) {
            return unspacedEnd(s, i);
        }
        return startsWord(s, i, c) ? wordEnd(s, i) : i + Character.charCount(c);
    }

    private static Token token(String s, int start, int end, boolean glued) {
        String text = s.substring(start, end);
        if (DigitSlips.end(s, start) == end) {
            text = DigitSlips.digits(text);
        }
        if (Character.isDigit(text.charAt(0))) {
            int number = text.length() > 9 ? -1 : Integer.parseInt(text);
            return new Token(Token.Kind.NUMBER, text, text, start, end, glued, number);
        }
        boolean word = Character.isLetter(text.codePointAt(0)) || text.length() > 1;
        return word
                ? new Token(Token.Kind.WORD, text, Fold.key(text), start, end, glued, -1)
                : new Token(Token.Kind.SIGN, text, text, start, end, glued, -1);
    }

    private static int runEnd(String s, int i) {
        int end = i;
        while (end < s.length() && Character.isDigit(s.charAt(end))) {
            end++;
        }
        return end;
    }

    /** A letter, or the apostrophe of 't and 's before a surname. */
    private static boolean startsWord(String s, int i, int c) {
        if (Character.isLetter(c)) {
            return true;
        }
        return apostrophe((char) c)
                && (i == 0 || s.charAt(i - 1) == ' ')
                && i + 2 < s.length()
                && Character.isLetter(s.charAt(i + 1))
                && s.charAt(i + 2) == ' ';
    }

    private static int wordEnd(String s, int start) {
        int i = start + 1;
        while (i < s.length() && partOfWord(s, i)) {
            i++;
        }
        return i;
    }

    private static boolean partOfWord(String s, int i) {
        char c = s.charAt(i);
        int point = s.codePointAt(i);
        if (Character.isLowSurrogate(c)) {
            return true;
        }
        if (unspaced(point)) {
            return false;
        }
        if (Character.isLetter(point)
                || Character.getType(c) == Character.COMBINING_SPACING_MARK
                || Character.getType(c) == Character.NON_SPACING_MARK) {
            return true;
        }
        return apostrophe(c)
                && i + 1 < s.length()
                && Character.isLetter(s.charAt(i + 1))
                && Character.isLetter(s.charAt(i - 1));
    }

    private static boolean apostrophe(char c) {
        return c == '\'' || c == '’' || c == 'ʼ' || c == '‘' || c == 'ʹ';
    }

    static boolean unspaced(int c) {
        return switch (Character.UnicodeScript.of(c)) {
            case HAN, HIRAGANA, KATAKANA, HANGUL, THAI, LAO, KHMER, MYANMAR -> true;
            default -> false;
        };
    }

    /** Length of the known word there; a letter or two of an alphabet are a word only where the run ends behind them. */
    private int knownAt(String s, int i) {
        int known = knownPrefix.applyAsInt(s.substring(i, Math.min(s.length(), i + 8)));
        boolean whole = known >= SHORTEST_CUT
                || i + known >= s.length()
                || !unspaced(s.codePointAt(i + known))
                || !alphabet(s.codePointAt(i));
        return whole ? known : 0;
    }

    private static boolean alphabet(int c) {
        return switch (Character.UnicodeScript.of(c)) {
            case THAI, LAO, KHMER, MYANMAR -> true;
            default -> false;
        };
    }

    private int unspacedEnd(String s, int start) {
        int known = knownAt(s, start);
        if (known > 0) {
            return start + known;
        }
        int i = start;
        while (i < s.length() && unspaced(s.codePointAt(i))) {
            if (i > start && knownAt(s, i) > 0) {
                break;
            }
            i += Character.charCount(s.codePointAt(i));
        }
        return i;
    }
}
