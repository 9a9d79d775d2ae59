package org.tidegate.examination.linkage;

/**
 * How far the bearer of an identity document is the booked person.
 *
 * @param agreement all in all
 * @param surname by itself, like the two after it
 */
public record DocumentMatch(
        DocumentAgreement agreement, DocumentAgreement surname, DocumentAgreement givenNames, DocumentAgreement birth) {

    /** For a person to read; names nobody. */
    public String words() {
        return "surname " + word(surname) + ", given names " + word(givenNames) + ", date of birth " + word(birth);
    }

    private static String word(DocumentAgreement part) {
        return switch (part) {
            case YES -> "the same";
            case NO -> "another";
            case UNREAD -> "unclear";
        };
    }
}
