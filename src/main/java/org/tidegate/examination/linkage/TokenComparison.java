package org.tidegate.examination.linkage;

import java.util.Arrays;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** Compares two words of a name. */
final class TokenComparison {

    private static final Pattern DOUBLED = Pattern.compile("(.)\\1");

    private static final JaroWinklerSimilarity JARO_WINKLER = new JaroWinklerSimilarity();

    private final Nicknames nicknames;

    TokenComparison(Nicknames nicknames) {
        this.nicknames = nicknames;
    }

    /** @param given whether the booked word is a given name, so that familiar forms count */
    TokenLevel compare(NameToken stated, NameToken booked, boolean given) {
        if (stated.sharesSpelling(booked)) {
            return TokenLevel.EXACT;
        }
        if (stated.isInitial() || booked.isInitial()) {
            return sameInitial(stated, booked) ? TokenLevel.INITIAL : TokenLevel.NONE;
        }
        if (stated.sharesSound(booked)) {
            return TokenLevel.SPELLING;
        }
        if (given && nicknames.related(stated, booked)) {
            return TokenLevel.NICKNAME;
        }
        if (vowelsOnly(stated, booked)) {
            return TokenLevel.SPELLING;
        }
        TokenLevel written = likeness(stated.spellings(), booked.spellings(), given);
        return written.agrees() || !nearlySounds(stated, booked) ? written : TokenLevel.TYPO;
    }

    /** Khaled and Khalid, Youssef and Yusuf: vowels that languages without them in writing leave open. */
    private static boolean vowelsOnly(NameToken stated, NameToken booked) {
        return stated.sounds().stream().anyMatch(a -> booked.sounds().stream().anyMatch(b -> sameOpenVowels(a, b)));
    }

    private static boolean sameOpenVowels(String a, String b) {
        return a.length() == b.length()
                && a.length() >= 5
                && a.replace('e', 'i')
                        .replace('o', 'u')
                        .equals(b.replace('e', 'i').replace('o', 'u'));
    }

    private static boolean nearlySounds(NameToken stated, NameToken booked) {
        return stated.sounds().stream().anyMatch(a -> booked.sounds().stream().anyMatch(b -> nearly(a, b)));
    }

    /** One sound off, or the same consonants where there are enough of them: vowels are what transliterations differ in. */
    private static boolean nearly(String a, String b) {
        boolean near = Math.min(a.length(), b.length()) >= 5 && Damerau.distance(a, b, 2) < 2;
        String consonants = SoundKey.consonants(a);
        return near || (consonants.length() >= 4 && consonants.equals(SoundKey.consonants(b)));
    }

    private static TokenLevel likeness(Set<String> stated, Set<String> booked, boolean given) {
        TokenLevel best = TokenLevel.NONE;
        for (String a : stated) {
            for (String b : booked) {
                TokenLevel level = likeness(a, b, given);
                best = level.score > best.score ? level : best;
            }
        }
        return best;
    }

    private static TokenLevel likeness(String stated, String booked, boolean given) {
        if (slip(stated, booked)) {
            return TokenLevel.TYPO;
        }
        boolean shortened = given
                ? stated.length() >= 2 && booked.startsWith(stated) || stated.length() >= 3 && booked.contains(stated)
                : booked.startsWith(stated);
        return shortened ? TokenLevel.INITIAL : TokenLevel.NONE;
    }

    /** One slip in words of four letters up, two in words of eight up; or nearly the same by Jaro and Winkler; a longer name is another name. */
    private static boolean slip(String a, String b) {
        int shorter = Math.min(a.length(), b.length());
        if (shorter < 3) {
            return false;
        }
        int slips = Damerau.distance(a, b, 3);
        boolean longer = slips > 1 && (a.startsWith(b) || b.startsWith(a));
        boolean near = (slips == 2 && shorter >= 7) || (shorter >= 6 && JARO_WINKLER.apply(a, b) >= 0.94);
        return slips == 1 || (near && !longer) || (slips == 2 && swappedBesideDouble(a, b));
    }

    /** Muosa for Moussa: two neighbours swapped where a letter is also doubled or not, too little for another name. */
    private static boolean swappedBesideDouble(String a, String b) {
        String x = undoubled(a);
        String y = undoubled(b);
        return x.length() >= 5 && x.length() == y.length() && sameLetters(x, y) && Damerau.distance(x, y, 2) < 2;
    }

    private static String undoubled(String word) {
        return DOUBLED.matcher(word).replaceAll("$1");
    }

    private static boolean sameLetters(String a, String b) {
        return Arrays.equals(a.chars().sorted().toArray(), b.chars().sorted().toArray());
    }

    private static boolean sameInitial(NameToken a, NameToken b) {
        return a.spellings().stream().anyMatch(x -> b.spellings().stream().anyMatch(y -> x.charAt(0) == y.charAt(0)));
    }
}
