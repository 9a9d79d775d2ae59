package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Known words and phrases by their folded tokens. Immutable; shared between threads. */
final class Lexicon {

    /** A meaning that covers {@code length} tokens. */
    record Match(Meaning meaning, int length) {}

    private record Phrase(List<String> words, Meaning meaning) {}

    /** Folded words of so few letters mean something only where they are spelled with their accents. */
    private static final int LONGEST_EXACT = 3;

    private static final String TEST = "test";

    private final Map<String, Meaning> words;
    private final Set<String> spellings;
    private final Map<String, List<Phrase>> phrases;
    private final int longestUnspaced;

    private Lexicon(
            Map<String, Meaning> words, Set<String> spellings, Map<String, List<Phrase>> phrases, int longestUnspaced) {
        this.words = words;
        this.spellings = spellings;
        this.phrases = phrases;
        this.longestUnspaced = longestUnspaced;
    }

    /**
     * @param meanings by phrase: folded words with single spaces
     * @param spellings in lower case, words of mail as they are spelled
     */
    static Lexicon of(Map<String, Meaning> meanings, Set<String> spellings) {
        Map<String, Meaning> words = new HashMap<>();
        Map<String, List<Phrase>> phrases = new HashMap<>();
        int longest = 0;
        for (Map.Entry<String, Meaning> e : meanings.entrySet()) {
            List<String> parts = List.of(e.getKey().split(" "));
            if (parts.size() == 1) {
                words.put(e.getKey(), e.getValue());
                boolean unspaced = Tokenizer.unspaced(e.getKey().codePointAt(0));
                longest = unspaced ? Math.max(longest, e.getKey().length()) : longest;
            } else {
                phrases.computeIfAbsent(parts.get(0), k -> new ArrayList<>()).add(new Phrase(parts, e.getValue()));
            }
        }
        phrases.values()
                .forEach(
                        list -> list.sort((a, b) -> b.words().size() - a.words().size()));
        return new Lexicon(words, Set.copyOf(spellings), phrases, longest);
    }

    /** Single words of months. */
    Map<String, Integer> months() {
        Map<String, Integer> months = new TreeMap<>();
        words.forEach((key, m) -> {
            if (m.month() > 0) {
                months.put(key, m.month());
            }
        });
        return months;
    }

    Meaning word(String key) {
        return words.getOrDefault(key, Meaning.NONE);
    }

    /** Hồ is not the Italian ho, nor Lam the Vietnamese làm: accents that are there, and those of short words, must be right. */
    Meaning word(Token t) {
        Meaning m = word(t.key());
        if (m.unknown() && compoundOfTest(t.key())) {
            return word(TEST);
        }
        if (m.kinds() == 0) {
            return m;
        }
        String lower = t.text().toLowerCase(Locale.ROOT);
        boolean bare = t.key().length() > LONGEST_EXACT && Fold.key(lower).equals(lower);
        return bare || spellings.contains(lower) ? m : m.withoutMail();
    }

    /** Phrases of two words and more that start at token {@code i}, the longest first; dots and hyphens between words do not matter. */
    List<Match> phrasesAt(List<Token> tokens, int i) {
        List<Phrase> starting = phrases.get(tokens.get(i).key());
        if (starting == null) {
            return List.of();
        }
        List<Match> found = new ArrayList<>();
        for (Phrase p : starting) {
            int end = end(tokens, i, p.words());
            if (end > 0) {
                found.add(new Match(p.meaning(), end - i));
            }
        }
        return found;
    }

    private static int end(List<Token> tokens, int start, List<String> words) {
        int t = start;
        for (int w = 0; w < words.size(); w++, t++) {
            if (w > 0 && t < tokens.size() && tokens.get(t).isOneOf(".-")) {
                t++;
            }
            if (t >= tokens.size() || !tokens.get(t).key().equals(words.get(w))) {
                return -1;
            }
        }
        return t;
    }

    /** Testitulos, Koronatest. */
    private static boolean compoundOfTest(String key) {
        return key.length() >= 2 * TEST.length() && (key.startsWith(TEST) || key.endsWith(TEST));
    }

    /** Length of the longest known word of an unspaced script that {@code text} starts with. */
    int knownPrefix(String text) {
        for (int length = Math.min(longestUnspaced, text.length()); length > 0; length--) {
            if (words.containsKey(text.substring(0, length))) {
                return length;
            }
        }
        return 0;
    }
}
