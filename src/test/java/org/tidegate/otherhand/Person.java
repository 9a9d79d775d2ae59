package org.tidegate.otherhand;

import java.util.Locale;

/** An invented holder of an invented document. UTO is the code that ICAO 9303 keeps for specimens. */
record Person(
        String surname, String given, String born, String number, String birthCode, String expiryCode, String sex) {

    private static final String[] SURNAMES = {
        "OLDERSHAW", "VANTERPOEL", "MIRZAKHAN", "TOBIASSEN", "QUILLEN", "DRUMMACHER", "ASKEROY", "BELLANDINE",
        "OKONWARA", "PETRESKU", "FENNIMORE", "LAGERDAHL", "TSUKAWA", "MORANTE", "HUXBURY", "ZELINSKA"
    };
    private static final String[] GIVEN = {
        "MARTA", "JONAS", "ADE", "ROSALIND", "TOMÁS", "INGRID", "KENJI", "LEILA", "PETER", "AOIFE", "NADIA", "BRUNO"
    };
    private static final String[] MONTHS = {
        "JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"
    };

    static Person drawn(Draw draw) {
        int day = draw.whole(1, 28);
        int month = draw.whole(1, 12);
        int year = draw.whole(1948, 2004);
        return new Person(
                draw.oneOf(SURNAMES),
                draw.oneOf(GIVEN),
                String.format(Locale.ROOT, "%02d %s %d", day, MONTHS[month - 1], year),
                draw.letters(2, "ABCDEFGHKLMNPR") + draw.letters(7, "0123456789"),
                String.format(Locale.ROOT, "%02d%02d%02d", year % 100, month, day),
                String.format(Locale.ROOT, "%02d%02d%02d", draw.whole(27, 36), draw.whole(1, 12), draw.whole(1, 28)),
                draw.oneOf("F", "M"));
    }

    /** Two lines of 44 characters: ICAO 9303 part 4. */
    String[] passportZone() {
        String birth = birthCode + check(birthCode);
        String expiry = expiryCode + check(expiryCode);
        String doc = number + check(number);
        String optional = "<".repeat(14) + check("<".repeat(14));
        return new String[] {
            fill("P<UTO" + name(), 44),
            doc + "UTO" + birth + sex + expiry + optional + check(doc + birth + expiry + optional)
        };
    }

    /** Three lines of 30 characters: ICAO 9303 part 5. */
    String[] cardZone() {
        String birth = birthCode + check(birthCode);
        String expiry = expiryCode + check(expiryCode);
        String first = fill("I<UTO" + number + check(number), 30);
        String optional = "<".repeat(11);
        return new String[] {
            first,
            birth + sex + expiry + "UTO" + optional + check(first.substring(5) + birth + expiry + optional),
            fill(name(), 30)
        };
    }

    private String name() {
        return surname + "<<" + given.replace('Á', 'A');
    }

    private static String fill(String text, int length) {
        return (text + "<".repeat(length)).substring(0, length);
    }

    /** Weights 7, 3, 1, modulo 10: ICAO 9303 part 3, 4.9. */
    private static int check(String text) {
        int sum = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int value = c == '<' ? 0 : Character.digit(c, 36);
            sum += value * new int[] {7, 3, 1}[i % 3];
        }
        return sum % 10;
    }
}
