package org.tidegate.examination.picture.mrz;

import java.util.List;
import java.util.Optional;

/**
 * One machine-readable zone as text. Its check digits cover numbers and dates; names, issuer and nationality have none.
 *
 * @param lines as read, all of the format's length
 */
public record Mrz(MrzFormat format, List<String> lines) {

    /** One check digit and whether it holds. */
    public record Check(String what, boolean holds) {}

    public Mrz {
        lines = List.copyOf(lines);
    }

    /** Empty where number and length of the lines fit no format or a character is none of A–Z, 0–9 and the filler. */
    public static Optional<Mrz> of(List<String> lines) {
        boolean clean = lines.stream().allMatch(l -> l.matches("[A-Z0-9<]+"));
        return clean ? MrzFormat.of(lines).map(format -> new Mrz(format, lines)) : Optional.empty();
    }

    /** Every check digit of the format. */
    public List<Check> checks() {
        return layout().checks().stream()
                .map(c -> new Check(c.what(), c.holds(lines) || holdsAsLongNumber(c)))
                .toList();
    }

    /** Whether every check digit holds. */
    public boolean valid() {
        return checks().stream().allMatch(Check::holds);
    }

    /** Fillers as spaces; the whole name where surname and given names are not told apart. */
    public String surname() {
        return words(names()[0]);
    }

    /** Given names, possibly cut short (ICAO Doc 9303-4 §4.2.3 truncation); empty where there are none. */
    public String givenNames() {
        return names().length > 1 ? words(names()[1]) : "";
    }

    /** As written, YYMMDD; unknown parts are fillers (ICAO Doc 9303-3 §4.8). */
    public String birth() {
        return layout().birth().in(lines);
    }

    /** As written, YYMMDD. */
    public String expiry() {
        return layout().expiry().in(lines);
    }

    /** Issuing state or organisation, up to three letters (ICAO Doc 9303-3 §5). */
    public String issuer() {
        return words(layout().issuer().in(lines));
    }

    /** Without fillers, its overflow into the optional data included. */
    public String documentNumber() {
        return isLongNumber() ? number() + longRest() : words(number());
    }

    /**
     * How many characters stand where no zone has any: issuer, name and document number are not empty, and nothing follows the
     * fillers that end an issuer or a name (ICAO Doc 9303-3 §4.2 to §4.7). Lines of ordinary print that were taken for a zone have many; in a zone one is a
     * misread filler.
     */
    public int strays() {
        String issuer = layout().issuer().in(lines);
        String names = layout().names().in(lines);
        String[] parts = names.split("<<+");
        int strays = missing(issuer) + missing(names) + missing(number());
        for (int i = 2; i < parts.length; i++) {
            strays += parts[i].length();
        }
        return strays + issuer.replaceFirst("^[A-Z]*", "").replace("<", "").length();
    }

    private static int missing(String field) {
        return words(field).isEmpty() ? field.length() : 0;
    }

    private Layout layout() {
        return Layout.of(format);
    }

    private String[] names() {
        return layout().names().in(lines).split("<<", 2);
    }

    private static String words(String field) {
        return field.replace('<', ' ').strip().replaceAll(" +", " ");
    }

    private String number() {
        return layout().number().in(lines);
    }

    /** A number of more than nine characters goes on in the optional data, its check digit last (ICAO Doc 9303-5 §4.2.2.2 note j). */
    private boolean isLongNumber() {
        return format == MrzFormat.TD1
                && lines.get(0).charAt(14) == '<'
                && lines.get(0).charAt(15) != '<'
                && number().indexOf('<') < 0;
    }

    private String longRest() {
        String rest = lines.get(0).substring(15).split("<", 2)[0];
        return rest.substring(0, rest.length() - 1);
    }

    private boolean holdsAsLongNumber(Checked check) {
        if (!isLongNumber() || !check.what().equals("document number")) {
            return false;
        }
        char digit = lines.get(0).charAt(15 + longRest().length());
        // Issuers differ in whether the filler between the two parts takes a weight.
        return CheckDigit.holds(number() + longRest(), digit) || CheckDigit.holds(number() + "<" + longRest(), digit);
    }
}
