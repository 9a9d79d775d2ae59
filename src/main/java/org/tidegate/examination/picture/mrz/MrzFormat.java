package org.tidegate.examination.picture.mrz;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Sizes of machine-readable zones; where their fields stand is in {@link Layout}. */
public enum MrzFormat {
    /** Cards of ID-1 size: ICAO Doc 9303-5. */
    TD1(3, 30, "IAC"),
    /** Cards of ID-2 size: ICAO Doc 9303-6. */
    TD2(2, 36, "IACP"),
    /** Passports: ICAO Doc 9303-4. */
    TD3(2, 44, "P"),
    /** Visas of passport size: ICAO Doc 9303-7 §4. */
    MRV_A(2, 44, "V"),
    /** Visas of ID-2 size: ICAO Doc 9303-7 §5. */
    MRV_B(2, 36, "V");

    private final int lines;
    private final int length;
    private final String firstLetters;

    MrzFormat(int lines, int length, String firstLetters) {
        this.lines = lines;
        this.length = length;
        this.firstLetters = firstLetters;
    }

    /** How many lines it has. */
    public int lines() {
        return lines;
    }

    /** How many characters a line has. */
    public int length() {
        return length;
    }

    /** Letters that its document code may begin with. */
    String firstLetters() {
        return firstLetters;
    }

    /** Every format of so many lines of such length. */
    static List<MrzFormat> of(int lines, int length) {
        return Arrays.stream(values())
                .filter(f -> f.lines == lines && f.length == length)
                .toList();
    }

    /** The format that the lines' number, length and first letter fit; V tells visas (ICAO Doc 9303-7 §4.2.2). */
    static Optional<MrzFormat> of(List<String> lines) {
        boolean visa = !lines.isEmpty() && lines.get(0).startsWith("V");
        return Arrays.stream(values())
                .filter(f -> f.lines == lines.size() && lines.stream().allMatch(l -> l.length() == f.length))
                .filter(f -> f == TD1 || visa == (f == MRV_A || f == MRV_B))
                .findFirst();
    }
}
