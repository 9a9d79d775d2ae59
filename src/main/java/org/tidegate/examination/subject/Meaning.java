package org.tidegate.examination.subject;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidegate.rules.WordKind;

/**
 * Everything a word or phrase can mean, over all languages.
 *
 * @param month 1 to 12, 0 for none
 * @param weekday ISO 1 (Monday) to 7, 0 for none
 * @param hours a bit for each hour of the day that a day-period word covers, 0 for none
 * @param dayOffset days from today, for relative words
 * @param kinds bits by the ordinal of {@link WordKind}
 * @param number value of a number word, -1 for none
 * @param languages those in which it is that number word: bits of {@link Languages}
 */
record Meaning(
        int month,
        int weekday,
        int hours,
        @Nullable Integer dayOffset,
        int number,
        long languages,
        long kinds,
        Optional<String> clinic) {

    private static final long OF_MAIL = mask(EnumSet.of(
            WordKind.FILLER,
            WordKind.NAME_CUE,
            WordKind.BUSINESS,
            WordKind.NOTICE,
            WordKind.RESULT,
            WordKind.PREFIX,
            WordKind.TITLE,
            WordKind.SUFFIX,
            WordKind.LABEL));

    private static final long WORDS_OF_MAIL = mask(EnumSet.of(
            WordKind.FILLER,
            WordKind.RESULT,
            WordKind.NAME_CUE,
            WordKind.TIME_CUE,
            WordKind.NOTICE,
            WordKind.BUSINESS));

    static final Meaning NONE = new Meaning(0, 0, 0, null, -1, 0, 0, Optional.empty());

    static long mask(Set<WordKind> kinds) {
        long mask = 0;
        for (WordKind kind : kinds) {
            mask |= bit(kind);
        }
        return mask;
    }

    /** In memory only; nothing stored depends on the order of the kinds. */
    @SuppressWarnings("EnumOrdinal")
    private static long bit(WordKind kind) {
        return 1L << kind.ordinal();
    }

    boolean is(WordKind kind) {
        return (kinds & bit(kind)) != 0;
    }

    boolean unknown() {
        return kinds == 0 && !calendar() && number < 0 && clinic.isEmpty();
    }

    /** A word that mails about tests are made of, and hardly anybody's name. */
    boolean wordOfMail() {
        return (kinds & WORDS_OF_MAIL) != 0;
    }

    /** The same, but no word of mail. */
    Meaning withoutMail() {
        return new Meaning(month, weekday, hours, dayOffset, number, languages, kinds & ~OF_MAIL, clinic);
    }

    /** Announces a number or code. */
    boolean label() {
        return is(WordKind.LABEL)
                || is(WordKind.REFERENCE_LABEL)
                || is(WordKind.MARK_LABEL)
                || is(WordKind.BIRTH_LABEL);
    }

    /** Part of dates and times only. */
    boolean calendar() {
        return month > 0 || weekday > 0 || hours != 0 || dayOffset != null;
    }
}
