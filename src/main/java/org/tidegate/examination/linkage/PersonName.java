package org.tidegate.examination.linkage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A name in words, particles and generation suffix set apart.
 *
 * @param tokens at most {@value #MOST} words
 * @param suffix jr, sr, ii, iii, iv
 */
record PersonName(List<NameToken> tokens, Optional<String> suffix) {

    /** More words than any name has; the rest of an overlong input is not looked at. */
    static final int MOST = 8;

    private static final Pattern APOSTROPHES = Pattern.compile("['’`´ʼ‘]");
    private static final Pattern NOT_LETTERS = Pattern.compile("[^\\p{L}\\p{M}]+");

    private static final int MOST_JOINED = 4;

    private static final Set<String> PARTICLES = Set.of(
            "van", "von", "der", "den", "ter", "ten", "de", "del", "della", "di", "da", "do", "dos", "das", "du", "des",
            "la", "las", "los", "le", "el", "al", "bin", "bint", "ibn", "ben", "ap", "ab", "af", "av", "zu", "zur",
            "st", "san", "mac", "mc", "abu", "abou", "dela");

    /** Words for "and" between two family names; elsewhere a single letter is an initial. */
    private static final Set<String> AND = Set.of("y", "e", "i");

    private static final Set<String> JUNIOR = Set.of("jr", "jnr", "junior", "jun", "filho", "hijo");
    private static final Set<String> SENIOR = Set.of("sr", "snr", "senior", "sen", "pai");
    private static final Set<String> NUMERALS = Set.of("ii", "iii", "iv");

    static PersonName of(String text) {
        List<NameToken> tokens = new ArrayList<>();
        Optional<String> suffix = Optional.empty();
        for (String word : NOT_LETTERS.split(APOSTROPHES.matcher(text).replaceAll(""))) {
            String lower = word.toLowerCase(Locale.ROOT);
            Optional<String> generation = tokens.isEmpty() ? Optional.empty() : generation(lower);
            if (generation.isPresent()) {
                suffix = generation;
            } else if (!word.isEmpty() && tokens.size() < MOST) {
                addWord(tokens, word);
            }
        }
        return new PersonName(List.copyOf(tokens), suffix);
    }

    private static void addWord(List<NameToken> tokens, String word) {
        NameToken token = NameToken.of(word.length() > 40 ? word.substring(0, 40) : word);
        if (!token.spellings().isEmpty()) {
            tokens.add(token);
        }
    }

    private static Optional<String> generation(String lower) {
        if (JUNIOR.contains(lower)) {
            return Optional.of("jr");
        }
        if (SENIOR.contains(lower)) {
            return Optional.of("sr");
        }
        return NUMERALS.contains(lower) ? Optional.of(lower) : Optional.empty();
    }

    /** The words that carry the name: particles left out, unless nothing else is there. */
    List<NameToken> core() {
        List<NameToken> core = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            boolean between = i >= 2 && i + 1 < tokens.size();
            boolean and = between && AND.contains(tokens.get(i).written());
            if (!and && !PARTICLES.contains(tokens.get(i).plain())) {
                core.add(tokens.get(i));
            }
        }
        return core.isEmpty() ? tokens : List.copyOf(core);
    }

    /** The same name with neighbouring words written as one wherever the other name has them as one word. */
    PersonName joinedLike(PersonName other) {
        List<NameToken> out = new ArrayList<>();
        int at = 0;
        while (at < tokens.size()) {
            int length = MOST_JOINED;
            while (length > 1 && !joins(at, length, other)) {
                length--;
            }
            out.add(length == 1 ? tokens.get(at) : join(at, length));
            at += length;
        }
        return new PersonName(List.copyOf(out), suffix);
    }

    private boolean joins(int at, int length, PersonName other) {
        if (at + length > tokens.size()) {
            return false;
        }
        NameToken joined = join(at, length);
        boolean initial = tokens.subList(at, at + length).stream().anyMatch(NameToken::isInitial);
        return other.tokens.stream().anyMatch(t -> t.sharesSpelling(joined) || !initial && t.sharesSound(joined));
    }

    private NameToken join(int at, int length) {
        return NameToken.of(
                tokens.subList(at, at + length).stream().map(NameToken::written).collect(Collectors.joining()));
    }
}
