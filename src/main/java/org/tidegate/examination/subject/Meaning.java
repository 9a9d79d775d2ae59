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
        Set<WordKind> kinds,
        Optional<String> clinic) {

    private static final Set<WordKind> OF_MAIL = Set.copyOf(EnumSet.of(
            WordKind.FILLER,
            WordKind.NAME_CUE,
            WordKind.BUSINESS,
            WordKind.NOTICE,
            WordKind.RESULT,
            WordKind.PREFIX,
            WordKind.TITLE,
            WordKind.LABEL));

    static final Meaning NONE = new Meaning(0, 0, 0, null, -1, 0, Set.of(), Optional.empty());

    boolean is(WordKind kind) {
        return kinds.contains(kind);
    }

    boolean unknown() {
        return kinds.isEmpty() && !calendar() && number < 0 && clinic.isEmpty();
    }

    /** A word that mails about tests are made of, and hardly anybody's name. */
    boolean wordOfMail() {
        return is(WordKind.FILLER)
                || is(WordKind.RESULT)
                || is(WordKind.NAME_CUE)
                || is(WordKind.TIME_CUE)
                || is(WordKind.NOTICE)
                || is(WordKind.BUSINESS);
    }

    /** The same, but no word of mail. */
    Meaning withoutMail() {
        Set<WordKind> kept = EnumSet.noneOf(WordKind.class);
        kinds.stream().filter(k -> !OF_MAIL.contains(k)).forEach(kept::add);
        return new Meaning(month, weekday, hours, dayOffset, number, languages, Set.copyOf(kept), clinic);
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
