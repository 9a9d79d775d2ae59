package org.tidegate.examination.subject;

/**
 * A word, a number or a sign.
 *
 * @param text as cleaned
 * @param key folded text of a word, digits of a number
 * @param start first character in the cleaned text
 * @param end behind the last
 * @param glued no white space before it
 * @param number the value of a number of up to nine digits, else -1
 */
record Token(Kind kind, String text, String key, int start, int end, boolean glued, int number) {

    enum Kind {
        WORD,
        NUMBER,
        SIGN
    }

    boolean isWord() {
        return kind == Kind.WORD;
    }

    boolean isNumber() {
        return kind == Kind.NUMBER;
    }

    boolean is(char sign) {
        return kind == Kind.SIGN && text.charAt(0) == sign;
    }

    boolean isOneOf(String signs) {
        return kind == Kind.SIGN && signs.indexOf(text.charAt(0)) >= 0;
    }

    int digits() {
        return kind == Kind.NUMBER ? text.length() : 0;
    }
}
