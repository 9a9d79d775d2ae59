package org.tidegate.examination.linkage;

import java.util.Optional;
import java.util.Set;
import org.tidegate.booking.Appointment;
import org.tidegate.examination.linkage.BirthComparison.Likeness;
import org.tidegate.finding.PictureFinding.Bearer;

/**
 * Compares the bearer of a machine-readable zone with the book. Names in the zone are transliterated by the table of ICAO 9303-3 section 6 and
 * bear no check digit, so a name that differs a little decides nothing; a date of birth bears one.
 */
public final class DocumentComparison {

    /** Levels that are the same name for sure. A slip is none of them: zones are read by machine and twins are named alike. */
    private static final Set<String> SAME =
            Set.of(NameAgreement.EXACT, NameAgreement.FIRST_ONLY, NameAgreement.DROPPED);

    private final NameComparison names;

    public DocumentComparison(Nicknames nicknames) {
        this.names = new NameComparison(nicknames);
    }

    /** How far the bearer is the booked person. */
    public DocumentMatch compare(Bearer bearer, Appointment booked) {
        NameAgreement name = names.compare(
                PersonName.of(bearer.givenNames() + " " + bearer.surname()),
                PersonName.of(booked.givenName()),
                PersonName.of(booked.familyName()));
        Likeness birth = BirthComparison.compare(bearer.birth(), booked.dateOfBirth());
        boolean other = isLatin(booked.fullName()) && differs(name.given()) && differs(name.family());
        return new DocumentMatch(
                other ? DocumentAgreement.NO : agreement(birth, name),
                degree(name.family()),
                degree(name.given()),
                degree(birth));
    }

    private static DocumentAgreement agreement(Likeness birth, NameAgreement name) {
        boolean named = same(name.given()) && same(name.family());
        return birth == Likeness.SAME && !named ? DocumentAgreement.UNREAD : degree(birth);
    }

    private static DocumentAgreement degree(Optional<String> level) {
        return same(level) ? DocumentAgreement.YES : differs(level) ? DocumentAgreement.NO : DocumentAgreement.UNREAD;
    }

    private static DocumentAgreement degree(Likeness birth) {
        return switch (birth) {
            case SAME -> DocumentAgreement.YES;
            case OPEN, ALIKE -> DocumentAgreement.UNREAD;
            case DIFFERENT -> DocumentAgreement.NO;
        };
    }

    private static boolean same(Optional<String> level) {
        return level.map(SAME::contains).orElse(false);
    }

    private static boolean differs(Optional<String> level) {
        return level.map(NameAgreement.DIFFERENT::equals).orElse(false);
    }

    /** Other scripts are transliterated in more ways than are known here. */
    private static boolean isLatin(String name) {
        return name.codePoints()
                .filter(Character::isLetter)
                .allMatch(c -> Character.UnicodeScript.of(c) == Character.UnicodeScript.LATIN);
    }
}
