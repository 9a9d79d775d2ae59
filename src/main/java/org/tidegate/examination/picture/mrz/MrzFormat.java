package org.tidegate.examination.picture.mrz;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Layouts of machine-readable zones: where each field stands and what its check digits cover. */
public enum MrzFormat {
    /** Cards of ID-1 size: ICAO Doc 9303-5 §4.2.2. */
    TD1(
            3,
            30,
            new Fields(span(0, 2, 5), span(2, 0, 30), span(0, 5, 14), span(1, 0, 6), span(1, 8, 14), span(1, 15, 18)),
            List.of(
                    checked("document number", span(0, 14, 15), span(0, 5, 14)),
                    checked("date of birth", span(1, 6, 7), span(1, 0, 6)),
                    checked("date of expiry", span(1, 14, 15), span(1, 8, 14)),
                    checked("whole", span(1, 29, 30), span(0, 5, 30), span(1, 0, 7), span(1, 8, 15), span(1, 18, 29)))),
    /** Cards of ID-2 size: ICAO Doc 9303-6 §4.2.2. */
    TD2(
            2,
            36,
            new Fields(span(0, 2, 5), span(0, 5, 36), span(1, 0, 9), span(1, 13, 19), span(1, 21, 27), span(1, 10, 13)),
            List.of(
                    checked("document number", span(1, 9, 10), span(1, 0, 9)),
                    checked("date of birth", span(1, 19, 20), span(1, 13, 19)),
                    checked("date of expiry", span(1, 27, 28), span(1, 21, 27)),
                    checked("whole", span(1, 35, 36), span(1, 0, 10), span(1, 13, 20), span(1, 21, 35)))),
    /** Passports: ICAO Doc 9303-4 §4.2.2. */
    TD3(
            2,
            44,
            new Fields(span(0, 2, 5), span(0, 5, 44), span(1, 0, 9), span(1, 13, 19), span(1, 21, 27), span(1, 10, 13)),
            List.of(
                    checked("document number", span(1, 9, 10), span(1, 0, 9)),
                    checked("date of birth", span(1, 19, 20), span(1, 13, 19)),
                    checked("date of expiry", span(1, 27, 28), span(1, 21, 27)),
                    checked("personal number", span(1, 42, 43), span(1, 28, 42)),
                    checked("whole", span(1, 43, 44), span(1, 0, 10), span(1, 13, 20), span(1, 21, 43)))),
    /** Visas of passport size, which have no check digit over the whole: ICAO Doc 9303-7 §4.2.2. */
    MRV_A(2, 44, TD3.fields, TD3.checks.subList(0, 3)),
    /** Visas of ID-2 size: ICAO Doc 9303-7 §5.2.2. */
    MRV_B(2, 36, TD2.fields, TD2.checks.subList(0, 3));

    /**
     * @param names the whole name field; surname and given names in it are told apart by two fillers
     */
    record Fields(Span issuer, Span names, Span number, Span birth, Span expiry, Span nationality) {}

    private final int lines;
    private final int length;
    private final Fields fields;
    private final List<Checked> checks;

    MrzFormat(int lines, int length, Fields fields, List<Checked> checks) {
        this.lines = lines;
        this.length = length;
        this.fields = fields;
        this.checks = checks;
    }

    /** How many lines it has. */
    public int lines() {
        return lines;
    }

    /** How many characters a line has. */
    public int length() {
        return length;
    }

    Fields fields() {
        return fields;
    }

    List<Checked> checks() {
        return checks;
    }

    /** The layout that the lines' number, length and first letter fit; V tells visas (ICAO Doc 9303-7 §4.2.2). */
    static Optional<MrzFormat> of(List<String> lines) {
        boolean visa = !lines.isEmpty() && lines.get(0).startsWith("V");
        return Arrays.stream(values())
                .filter(f -> f.lines == lines.size() && lines.stream().allMatch(l -> l.length() == f.length))
                .filter(f -> visa == (f == MRV_A || f == MRV_B) || f == TD1)
                .findFirst();
    }

    private static Span span(int line, int from, int to) {
        return new Span(line, from, to);
    }

    private static Checked checked(String what, Span digit, Span... data) {
        return new Checked(what, List.of(data), digit);
    }
}
