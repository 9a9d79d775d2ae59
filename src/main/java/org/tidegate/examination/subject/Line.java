package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.List;
import org.tidegate.rules.WordKind;

/** One line of text as tokens with everything that each of them can mean. */
final class Line {

    private final TracedText text;
    private final List<Token> tokens;
    private final Lexicon lexicon;
    private final Meaning[] meanings;
    private final List<List<Lexicon.Match>> matches = new ArrayList<>();

    Line(TracedText text, List<Token> tokens, Lexicon lexicon) {
        this.text = text;
        this.tokens = tokens;
        this.lexicon = lexicon;
        meanings = new Meaning[tokens.size()];
        for (int i = 0; i < meanings.length; i++) {
            Token t = tokens.get(i);
            meanings[i] = t.isWord() ? lexicon.word(t) : Meaning.NONE;
            matches.add(matchesAt(i));
        }
    }

    private List<Lexicon.Match> matchesAt(int i) {
        if (!tokens.get(i).isWord()) {
            return List.of();
        }
        List<Lexicon.Match> phrases = lexicon.phrasesAt(tokens, i);
        if (meanings[i].unknown()) {
            return phrases;
        }
        List<Lexicon.Match> all = new ArrayList<>(phrases);
        all.add(new Lexicon.Match(meanings[i], 1));
        return all;
    }

    int size() {
        return tokens.size();
    }

    Token token(int i) {
        return tokens.get(i);
    }

    List<Token> tokens() {
        return tokens;
    }

    /** What the word at {@code i} means by itself; nothing outside the line. */
    Meaning meaning(int i) {
        return i >= 0 && i < meanings.length ? meanings[i] : Meaning.NONE;
    }

    /** What a part of a word means by itself. */
    Meaning known(String key) {
        return lexicon.word(key);
    }

    /** Meanings of the phrases that start at {@code i}, the longest first. */
    List<Lexicon.Match> matches(int i) {
        return matches.get(i);
    }

    boolean has(int i) {
        return i >= 0 && i < tokens.size();
    }

    boolean isNumber(int i) {
        return has(i) && tokens.get(i).isNumber();
    }

    /** An hour with two digits of minutes behind a separator. */
    boolean looksLikeTime(int i) {
        return isNumber(i)
                && tokens.get(i).number() < 24
                && isSign(i + 1, ".:-,;")
                && glued(i + 1)
                && isNumber(i + 2)
                && tokens.get(i + 2).digits() == 2;
    }

    boolean isWord(int i) {
        return has(i) && tokens.get(i).isWord();
    }

    boolean isSign(int i, String signs) {
        return has(i) && tokens.get(i).isOneOf(signs);
    }

    /** Hyphens part the facts of this line: one stands tight between a number and something else. */
    boolean hyphensPart() {
        for (int i = 1; i + 1 < tokens.size(); i++) {
            if (isSign(i, "-") && glued(i) && glued(i + 1) && (isNumber(i - 1) || isNumber(i + 1))) {
                return true;
            }
        }
        return false;
    }

    boolean glued(int i) {
        return has(i) && tokens.get(i).glued();
    }

    boolean is(int i, WordKind kind) {
        return meaning(i).is(kind);
    }

    /** Length of the longest phrase of that kind at {@code i}, 0 for none. */
    int length(int i, WordKind kind) {
        if (!has(i)) {
            return 0;
        }
        for (Lexicon.Match m : matches.get(i)) {
            if (m.meaning().is(kind)) {
                return m.length();
            }
        }
        return 0;
    }

    /** The word before {@code i}, over signs that only separate, is of the kind. */
    boolean after(int i, WordKind kind) {
        int before = i - 1;
        while (before >= 0 && isSign(before, ":.-=#º°")) {
            before--;
        }
        return meaning(before).is(kind);
    }

    String text(int from, int to) {
        return text.text()
                .substring(tokens.get(from).start(), tokens.get(to - 1).end());
    }

    /** First character in what the person typed. */
    int originStart(int token) {
        return text.origin()[tokens.get(token).start()];
    }

    /** Behind the last character in what the person typed. */
    int originEnd(int token) {
        return text.origin()[tokens.get(token).end()];
    }
}
