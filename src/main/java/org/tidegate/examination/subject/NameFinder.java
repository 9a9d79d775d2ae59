package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidegate.rules.SubjectRules;

/** The name: the run of words left over that looks most like one, and most like the sender's. */
final class NameFinder {

    private static final Set<String> PARTICLES = Set.of(
            "van", "von", "de", "der", "den", "del", "della", "di", "da", "do", "dos", "das", "du", "la", "le", "el",
            "al", "bin", "ibn", "ap", "af", "av", "ter", "ten", "zu", "y", "e", "san", "st", "mac", "mc", "ni", "o");
    private static final Set<String> SUFFIXES = Set.of("jr", "jnr", "sr", "snr", "ii", "iii", "iv");

    private final Set<String> fillers = new HashSet<>();
    private final Set<String> titles = new HashSet<>();

    NameFinder(SubjectRules rules) {
        rules.fillers().forEach(f -> Tokenizer.tokens(f).forEach(t -> fillers.add(t.key())));
        rules.resultWords().forEach(f -> Tokenizer.tokens(f).forEach(t -> fillers.add(t.key())));
        rules.titles().forEach(t -> titles.add(Folding.fold(t).replace(".", "")));
        titles.removeAll(SUFFIXES);
    }

    /** A name as written, with how well it convinces; lower is better. */
    List<Found<String>> find(String line, List<Token> tokens, boolean[] used, Set<String> senderWords) {
        List<Found<String>> found = new ArrayList<>();
        int from = 0;
        while (from < tokens.size()) {
            int to = from;
            while (to < tokens.size() && belongs(tokens, to, from, used)) {
                to++;
            }
            trimmed(tokens, from, to).ifPresent(run -> found.add(name(line, tokens, run[0], run[1], senderWords)));
            from = Math.max(to, from + 1);
        }
        found.sort(java.util.Comparator.comparingDouble(Found::cost));
        return found;
    }

    private boolean belongs(List<Token> tokens, int i, int from, boolean[] used) {
        Token t = tokens.get(i);
        if (used[i]) {
            return false;
        }
        if (t.word()) {
            return !noise(tokens, i) && !(i > from && lowerAmongCapitals(tokens, from, i));
        }
        boolean joins = t.mark("-.'’ª") && i > from && t.glued();
        return joins && (!t.mark(".") || tokens.get(i - 1).text().length() <= 3);
    }

    private boolean noise(List<Token> tokens, int i) {
        Token t = tokens.get(i);
        boolean besideDigits = i + 1 < tokens.size()
                        && tokens.get(i + 1).number()
                        && tokens.get(i + 1).glued()
                || i > 0 && tokens.get(i - 1).number() && t.glued();
        boolean title = t.text().length() > 1 && titles.contains(t.key());
        return besideDigits
                || title
                || fillers.contains(t.key()) && !t.key().equals("may")
                || CalendarWords.isWeekday(t.key())
                        && t.text().length() > 2
                        && Character.isLowerCase(t.text().charAt(0));
    }

    /** {@code Roddy MacNellan berth}: a small word behind capitals ends the name unless it is a particle. */
    private static boolean lowerAmongCapitals(List<Token> tokens, int from, int i) {
        boolean lower = Character.isLowerCase(tokens.get(i).text().codePointAt(0));
        boolean capitals = Character.isUpperCase(tokens.get(from).text().codePointAt(0));
        return lower
                && capitals
                && !PARTICLES.contains(tokens.get(i).key())
                && !tokens.get(i).glued();
    }

    private Optional<int[]> trimmed(List<Token> tokens, int from, int to) {
        int start = from;
        int end = to;
        while (start < end && (tokens.get(start).kind() == Token.Kind.MARK || lowerParticle(tokens.get(start)))) {
            start++;
        }
        while (end > start && (trailing(tokens, start, end) || lowerParticle(tokens.get(end - 1)))) {
            end--;
        }
        return start < end ? Optional.of(new int[] {start, end}) : Optional.empty();
    }

    private static boolean lowerParticle(Token t) {
        return t.word()
                && PARTICLES.contains(t.key())
                && t.text().length() <= 2
                && Character.isLowerCase(t.text().charAt(0));
    }

    private static boolean trailing(List<Token> tokens, int start, int end) {
        Token last = tokens.get(end - 1);
        if (last.kind() != Token.Kind.MARK) {
            return false;
        }
        boolean initial = last.mark(".")
                && end - 2 >= start
                && (tokens.get(end - 2).text().length() == 1
                        || SUFFIXES.contains(tokens.get(end - 2).key()));
        return !initial && !last.mark("ª");
    }

    private static Found<String> name(String line, List<Token> tokens, int from, int to, Set<String> senderWords) {
        int words = 0;
        int known = 0;
        int capitals = 0;
        int letters = 0;
        for (Token t : tokens.subList(from, to)) {
            if (t.word()) {
                words++;
                letters += t.text().length();
                known += senderWords.stream()
                                .anyMatch(s -> s.equals(t.key()) || t.key().length() > 3 && s.contains(t.key()))
                        ? 1
                        : 0;
                capitals += Character.isLowerCase(t.text().codePointAt(0)) ? 0 : 1;
            }
        }
        double cost = 3
                - 2.5 * known
                - (words >= 2 ? 1 : 0)
                - 0.5 * Math.min(capitals, 3)
                + (words > 6 ? 3 : 0)
                + (letters < 3 ? 2 : 0);
        return new Found<>(
                line.substring(tokens.get(from).start(), tokens.get(to - 1).end()), from, to, cost);
    }
}
