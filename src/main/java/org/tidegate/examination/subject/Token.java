package org.tidegate.examination.subject;

/**
 * A run of letters, a run of digits, or one other visible character.
 *
 * @param text as written
 * @param key folded for comparison: lower case, no accents
 * @param start index of its first character
 * @param end index behind its last character
 * @param glued whether no space stands before it
 */
record Token(Kind kind, String text, String key, int start, int end, boolean glued) {

    enum Kind {
        WORD,
        NUMBER,
        MARK
    }

    boolean word() {
        return kind == Kind.WORD;
    }

    boolean number() {
        return kind == Kind.NUMBER;
    }

    boolean mark(String any) {
        return kind == Kind.MARK && any.contains(text);
    }
}
