package org.tidegate.examination.linkage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Compares a stated name, in whatever order, with a booked given and family name: words are paired so that the sum of their
 * agreement is greatest, then the pairs are told as one level for the given and one for the family name.
 */
final class NameComparison {

    private final TokenComparison tokens;

    NameComparison(Nicknames nicknames) {
        this.tokens = new TokenComparison(nicknames);
    }

    NameAgreement compare(PersonName stated, PersonName given, PersonName family) {
        PersonName booked = concat(given, family);
        List<NameToken> words = stated.joinedLike(booked).core();
        List<NameToken> givenWords = given.joinedLike(stated).core();
        List<NameToken> familyWords = family.joinedLike(stated).core();
        Pairing pairing = pair(words, givenWords, familyWords);
        int left = words.size() - pairing.used();
        Optional<String> givenLevel = level(pairing.levels(0, givenWords.size()), left, false);
        boolean spent = givenLevel.filter(NameAgreement.DIFFERENT::equals).isPresent();
        Optional<String> familyLevel = level(
                pairing.levels(givenWords.size(), givenWords.size() + familyWords.size()),
                left - (spent ? 1 : 0),
                true);
        return new NameAgreement(givenLevel, familyLevel);
    }

    private static PersonName concat(PersonName a, PersonName b) {
        List<NameToken> all = new ArrayList<>(a.tokens());
        all.addAll(b.tokens());
        return new PersonName(all, Optional.empty());
    }

    /** The level of each booked word, given names first; words of the statement are used once. */
    private record Pairing(TokenLevel[] found) {

        int used() {
            return (int) Arrays.stream(found).filter(TokenLevel::agrees).count();
        }

        List<TokenLevel> levels(int from, int to) {
            return Arrays.asList(found).subList(from, to);
        }
    }

    private Pairing pair(List<NameToken> stated, List<NameToken> given, List<NameToken> family) {
        int booked = given.size() + family.size();
        TokenLevel[][] level = new TokenLevel[stated.size()][booked];
        for (int i = 0; i < stated.size(); i++) {
            for (int j = 0; j < booked; j++) {
                boolean isGiven = j < given.size();
                NameToken word = isGiven ? given.get(j) : family.get(j - given.size());
                level[i][j] = tokens.compare(stated.get(i), word, isGiven);
            }
        }
        return best(level, stated.size(), booked);
    }

    /** Assignment by subsets of the booked words: at most 8 stated words against 2^16 subsets, in practice 3 against 2^3. */
    private static Pairing best(TokenLevel[][] level, int stated, int booked) {
        int[][] score = new int[stated + 1][1 << booked];
        for (int i = stated - 1; i >= 0; i--) {
            for (int taken = 0; taken < 1 << booked; taken++) {
                int most = score[i + 1][taken];
                for (int j = 0; j < booked; j++) {
                    if ((taken & 1 << j) == 0 && level[i][j].agrees()) {
                        most = Math.max(most, level[i][j].score + score[i + 1][taken | 1 << j]);
                    }
                }
                score[i][taken] = most;
            }
        }
        return trace(level, score, stated, booked);
    }

    private static Pairing trace(TokenLevel[][] level, int[][] score, int stated, int booked) {
        TokenLevel[] found = new TokenLevel[booked];
        Arrays.fill(found, TokenLevel.NONE);
        int taken = 0;
        for (int i = 0; i < stated; i++) {
            for (int j = 0; j < booked; j++) {
                boolean open = (taken & 1 << j) == 0 && level[i][j].agrees();
                if (open && score[i][taken] == level[i][j].score + score[i + 1][taken | 1 << j]) {
                    found[j] = level[i][j];
                    taken |= 1 << j;
                    break;
                }
            }
        }
        return new Pairing(found);
    }

    private static Optional<String> level(List<TokenLevel> found, int left, boolean family) {
        if (found.isEmpty()) {
            return Optional.empty();
        }
        List<TokenLevel> agreeing = found.stream().filter(TokenLevel::agrees).toList();
        if (agreeing.isEmpty()) {
            return Optional.of(left > 0 ? NameAgreement.DIFFERENT : NameAgreement.UNSTATED);
        }
        boolean whole = agreeing.size() == found.size();
        if (!whole && left > 0) {
            return Optional.of(NameAgreement.PART);
        }
        TokenLevel worst = agreeing.stream().reduce(TokenLevel.EXACT, TokenLevel::worse);
        if (worst == TokenLevel.EXACT && !whole) {
            return Optional.of(partial(found, family));
        }
        return Optional.of(worst.ruleName());
    }

    private static String partial(List<TokenLevel> found, boolean family) {
        if (family) {
            return NameAgreement.DROPPED;
        }
        return found.get(0).agrees() ? NameAgreement.FIRST_ONLY : NameAgreement.SECOND_ONLY;
    }
}
