package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads a zone as a whole: of all texts in which every check digit holds, how likely is each character? Sums over all of them by the forward and
 * backward recursion (Rabiner 1989) along the zone; the state is the running sum of the field's check digit and that of the whole, each modulo
 * 10. A character that could be another one of the same value modulo 10 (such as {@code <}, 0, A, K and U) stays as open as it looks.
 */
final class CheckedDecoder {

    private static final int STATES = 100;
    private static final int GLYPHS = GlyphSheet.GLYPHS.length();

    /** A filler in place of a check digit stands after an empty field, or where a long number goes on elsewhere. */
    private static final double ODD_FILLER = 0.001;

    /**
     * One character's part in the sums.
     *
     * @param field its weight in the check digit of its field; 0 none
     * @param whole likewise in that over the whole
     * @param closes 1 the check digit of a field, 2 that over the whole, 0 none
     */
    private record Role(int field, int whole, int closes) {}

    private final List<Role> roles = new ArrayList<>();

    CheckedDecoder(MrzFormat format) {
        List<Checked> checks = Layout.of(format).checks();
        for (int line = 0; line < format.lines(); line++) {
            for (int i = 0; i < format.length(); i++) {
                roles.add(role(checks, line, i));
            }
        }
    }

    /**
     * @param likely for each glyph at each place, in reading order
     * @param agrees how likely the check digits are to hold, if what was seen were all that is known
     */
    record Decoded(double[][] likely, double agrees) {}

    private static Role role(List<Checked> checks, int line, int i) {
        int field = 0;
        int whole = 0;
        int closes = 0;
        for (Checked check : checks) {
            boolean all = check.what().equals("whole");
            int weight = weight(check.data(), line, i);
            field = all || weight == 0 ? field : weight;
            whole = all && weight != 0 ? weight : whole;
            if (check.digit().holds(line, i)) {
                closes = all ? 2 : 1;
            }
        }
        return new Role(field, whole, closes);
    }

    private static int weight(List<Span> data, int line, int i) {
        int at = 0;
        for (Span span : data) {
            if (span.holds(line, i)) {
                return CheckDigit.weight(at + i - span.from());
            }
            at += span.to() - span.from();
        }
        return 0;
    }

    /** @param seen likelihood of each glyph at each place, each place's summing to one */
    Decoded decode(double[][] seen) {
        int n = roles.size();
        double[][] before = new double[n + 1][STATES];
        double[][] after = new double[n + 1][STATES];
        before[0][0] = 1;
        double agrees = 1;
        for (int p = 0; p < n; p++) {
            forward(roles.get(p), seen[p], before[p], before[p + 1]);
            agrees *= scaled(before[p + 1]);
        }
        for (int s = 0; s < STATES; s++) {
            after[n][s] = 1;
        }
        double[][] likely = new double[n][GLYPHS];
        for (int p = n - 1; p >= 0; p--) {
            backward(roles.get(p), seen[p], before[p], after[p + 1], after[p], likely[p]);
            scaled(after[p]);
            scaled(likely[p]);
        }
        return new Decoded(likely, agrees);
    }

    private static void forward(Role role, double[] seen, double[] before, double[] next) {
        for (int s = 0; s < STATES; s++) {
            if (before[s] > 0) {
                for (int g = 0; g < GLYPHS; g++) {
                    int to = seen[g] > 0 ? next(role, s, g) : -1;
                    if (to >= 0) {
                        next[to] += before[s] * seen[g] * odds(role, s, g);
                    }
                }
            }
        }
    }

    private static void backward(
            Role role, double[] seen, double[] before, double[] after, double[] now, double[] likely) {
        for (int s = 0; s < STATES; s++) {
            for (int g = 0; g < GLYPHS; g++) {
                int to = seen[g] > 0 ? next(role, s, g) : -1;
                if (to >= 0) {
                    double share = seen[g] * odds(role, s, g) * after[to];
                    now[s] += share;
                    likely[g] += before[s] * share;
                }
            }
        }
    }

    private static boolean isOddFiller(Role role, int state, int glyph) {
        return role.closes() == 1 && glyph == GLYPHS - 1 && Math.floorDiv(state, 10) != 0;
    }

    private static double odds(Role role, int state, int glyph) {
        return isOddFiller(role, state, glyph) ? ODD_FILLER : 1;
    }

    /** The state after a glyph; −1 where it is a check digit that does not hold. */
    private static int next(Role role, int state, int glyph) {
        int value = CheckDigit.value(GlyphSheet.GLYPHS.charAt(glyph)) % 10;
        int field = Math.floorDiv(state, 10);
        int whole = state % 10;
        if (role.closes() == 1 && value != field && !isOddFiller(role, state, glyph)) {
            return -1;
        }
        if (role.closes() == 2 && value != whole) {
            return -1;
        }
        int nextField = role.closes() == 1 ? 0 : (field + role.field() * value) % 10;
        return nextField * 10 + (whole + role.whole() * value) % 10;
    }

    /** Brings the sum to one and tells what it was. */
    private static double scaled(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v;
        }
        for (int i = 0; i < values.length && sum > 0; i++) {
            values[i] /= sum;
        }
        return sum;
    }
}
