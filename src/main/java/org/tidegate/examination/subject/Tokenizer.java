package org.tidegate.examination.subject;

import com.ibm.icu.lang.UCharacter;
import java.util.ArrayList;
import java.util.List;

/** Cuts a line into tokens; invisible characters vanish, digits of any script become 0–9. */
final class Tokenizer {

    /** Tokens looked at; a longer line is cut there. */
    static final int MOST_TOKENS = 400;

    private Tokenizer() {}

    static List<Token> tokens(String line) {
        List<Token> tokens = new ArrayList<>();
        int at = 0;
        boolean glued = false;
        while (at < line.length() && tokens.size() < MOST_TOKENS) {
            int c = line.codePointAt(at);
            if (invisible(c)) {
                at += Character.charCount(c);
            } else if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
                at += Character.charCount(c);
                glued = false;
            } else {
                Token token = next(line, at, c, glued);
                tokens.add(token);
                at = token.end();
                glued = true;
            }
        }
        return tokens;
    }

    /** The words of a longer text, without the bound of a line. */
    static List<Token> words(String text) {
        List<Token> words = new ArrayList<>();
        text.lines().forEach(line -> tokens(line).stream().filter(Token::word).forEach(words::add));
        return words;
    }

    private static Token next(String line, int start, int c, boolean glued) {
        if (digit(c)) {
            return run(line, start, glued, Token.Kind.NUMBER);
        }
        if (letter(c)) {
            return run(line, start, glued, Token.Kind.WORD);
        }
        int end = start + Character.charCount(c);
        String text = line.substring(start, end);
        return new Token(Token.Kind.MARK, text, text, start, end, glued);
    }

    private static Token run(String line, int start, boolean glued, Token.Kind kind) {
        StringBuilder text = new StringBuilder();
        int at = start;
        while (at < line.length()) {
            int c = line.codePointAt(at);
            boolean more = kind == Token.Kind.NUMBER ? digit(c) : letter(c) || apostropheInside(line, at, start);
            if (!more && !invisible(c)) {
                break;
            }
            if (more && kind == Token.Kind.NUMBER) {
                text.append(UCharacter.digit(c));
            } else if (more) {
                text.appendCodePoint(c);
            }
            at += Character.charCount(c);
        }
        return new Token(kind, text.toString(), Folding.fold(text.toString()), start, at, glued);
    }

    private static boolean apostropheInside(String line, int at, int start) {
        return at > start
                && "'’ʼ`´".indexOf(line.charAt(at)) >= 0
                && at + 1 < line.length()
                && letter(line.codePointAt(at + 1));
    }

    private static boolean letter(int c) {
        return Character.isLetter(c) || Character.getType(c) == Character.NON_SPACING_MARK;
    }

    private static boolean digit(int c) {
        return UCharacter.isDigit(c);
    }

    /** Format controls: directional marks, joiners, soft hyphens, byte order marks (Unicode category Cf). */
    private static boolean invisible(int c) {
        return Character.getType(c) == Character.FORMAT
                || Character.getType(c) == Character.CONTROL && !Character.isWhitespace(c);
    }
}
