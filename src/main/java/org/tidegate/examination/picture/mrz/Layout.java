package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.List;

/**
 * Where each field of a format stands and what its check digits cover.
 *
 * @param names the whole name field; surname and given names in it are told apart by two fillers
 */
record Layout(
        Span issuer,
        Span names,
        Span number,
        Span birth,
        Span sex,
        Span expiry,
        Span nationality,
        List<Checked> checks) {

    /** ICAO Doc 9303-5 §4.2.2. */
    private static final Layout TD1 = new Layout(
            span(0, 2, 5),
            span(2, 0, 30),
            span(0, 5, 14),
            span(1, 0, 6),
            span(1, 7, 8),
            span(1, 8, 14),
            span(1, 15, 18),
            List.of(
                    checked("document number", span(0, 14, 15), span(0, 5, 14)),
                    checked("date of birth", span(1, 6, 7), span(1, 0, 6)),
                    checked("date of expiry", span(1, 14, 15), span(1, 8, 14)),
                    checked("whole", span(1, 29, 30), span(0, 5, 30), span(1, 0, 7), span(1, 8, 15), span(1, 18, 29))));

    /** ICAO Doc 9303-6 §4.2.2. */
    private static final Layout TD2 =
            twoLines(36, List.of(checked("whole", span(1, 35, 36), span(1, 0, 10), span(1, 13, 20), span(1, 21, 35))));

    /** ICAO Doc 9303-4 §4.2.2. */
    private static final Layout TD3 = twoLines(
            44,
            List.of(
                    checked("personal number", span(1, 42, 43), span(1, 28, 42)),
                    checked("whole", span(1, 43, 44), span(1, 0, 10), span(1, 13, 20), span(1, 21, 43))));

    /** Visas have no check digit over the whole: ICAO Doc 9303-7 §4.2.2, §5.2.2. */
    private static final Layout MRV_A = twoLines(44, List.of());

    private static final Layout MRV_B = twoLines(36, List.of());

    static Layout of(MrzFormat format) {
        return switch (format) {
            case TD1 -> TD1;
            case TD2 -> TD2;
            case TD3 -> TD3;
            case MRV_A -> MRV_A;
            case MRV_B -> MRV_B;
        };
    }

    /** What the formats of two lines have in common. */
    private static Layout twoLines(int length, List<Checked> more) {
        List<Checked> checks = new ArrayList<>(List.of(
                checked("document number", span(1, 9, 10), span(1, 0, 9)),
                checked("date of birth", span(1, 19, 20), span(1, 13, 19)),
                checked("date of expiry", span(1, 27, 28), span(1, 21, 27))));
        checks.addAll(more);
        return new Layout(
                span(0, 2, 5),
                span(0, 5, length),
                span(1, 0, 9),
                span(1, 13, 19),
                span(1, 20, 21),
                span(1, 21, 27),
                span(1, 10, 13),
                List.copyOf(checks));
    }

    private static Span span(int line, int from, int to) {
        return new Span(line, from, to);
    }

    private static Checked checked(String what, Span digit, Span... data) {
        return new Checked(what, List.of(data), digit);
    }
}
