package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.PictureFinding.Corner;

/**
 * Where the characters of a zone stand on a patch.
 *
 * @param rows from the top down, all numbered from 0 and of one length
 * @param lean how far upright strokes lean: x for each pixel down
 */
record ZoneGrid(List<TextRow> rows, double lean) {

    /** Rows that miss or have too much of this many places are brought to the length of a format. */
    private static final int MOST_OFF = 6;

    private record Choice(List<TextRow> rows, int length, int off) {}

    /** The rows next to one another that fit a format best; empty where none does. */
    static Optional<ZoneGrid> of(List<TextRow> rows) {
        Choice best = null;
        for (int[] size : new int[][] {{3, 30}, {2, 44}, {2, 36}}) {
            for (int from = 0; from + size[0] <= rows.size(); from++) {
                Choice choice = choice(rows.subList(from, from + size[0]), size[1]);
                if (choice.off() <= MOST_OFF * size[0] && (best == null || choice.off() < best.off())) {
                    best = choice;
                }
            }
        }
        return Optional.ofNullable(best).map(c -> aligned(c.rows(), c.length()));
    }

    private static Choice choice(List<TextRow> rows, int length) {
        int off =
                rows.stream().mapToInt(r -> Math.abs(r.grid().count() - length)).sum();
        int most = rows.stream().mapToInt(r -> r.grid().count()).max().orElse(0);
        return new Choice(rows, length, most > length + 2 ? Integer.MAX_VALUE : off);
    }

    /** Numbers all rows alike: the row that fits the length best leads, the others begin beside it. */
    private static ZoneGrid aligned(List<TextRow> rows, int length) {
        TextRow lead = rows.stream()
                .min(Comparator.comparingInt(r -> Math.abs(r.grid().count() - length)))
                .orElseThrow();
        int start = lead.grid().count() > length
                ? lead.grid().first() + lead.grid().count() - length
                : lead.grid().first();
        TextRow leading = lead.with(lead.grid().countedFrom(start, length));
        List<TextRow> out = new ArrayList<>();
        for (TextRow r : rows) {
            out.add(r.equals(lead) ? leading : r.with(beside(r, leading, length)));
        }
        return new ZoneGrid(List.copyOf(out), lean(out));
    }

    /** A row of the full length begins where it begins; another one under the beginning of the leading row. */
    private static PitchGrid beside(TextRow row, TextRow leading, int length) {
        int begin = row.grid().count() == length
                ? row.grid().first()
                : (int) Math.round(row.grid().numberAt(leading.grid().at(0)));
        return row.grid().countedFrom(begin, length);
    }

    /** From the places of equal number in the first and the last row. */
    private static double lean(List<TextRow> rows) {
        TextRow top = rows.get(0);
        TextRow low = rows.get(rows.size() - 1);
        double sum = 0;
        int n = top.grid().count();
        for (int i = 0; i < n; i++) {
            double x0 = top.grid().at(i);
            double x1 = low.grid().at(i);
            sum += (x1 - x0) / (low.middle().at(x1) - top.middle().at(x0));
        }
        return sum / n;
    }

    int length() {
        return rows.get(0).grid().count();
    }

    /** What stands at one place, upright. */
    CellWindow cell(Ink ink, int row, int i) {
        TextRow r = rows.get(row);
        double x = r.grid().at(i);
        double y = r.middle().at(x);
        double step = r.grid().step(i);
        double slope = r.middle().slope();
        float[] out = new float[CellWindow.COLUMNS * CellWindow.ROWS];
        for (int k = 0; k < out.length; k++) {
            double u = ((k % CellWindow.COLUMNS + 0.5) / CellWindow.COLUMNS - 0.5) * CellWindow.PITCHES * step;
            double v = ((Math.floorDiv(k, CellWindow.COLUMNS) + 0.5) / CellWindow.ROWS - 0.5)
                    * CellWindow.CAPITALS
                    * r.capital()
                    * step;
            out[k] = ink.sample(x + u + lean * v, y + v + slope * u);
        }
        return new CellWindow(out);
    }

    /** Corners of the zone on the patch, clockwise from the top left as the patch stands. */
    List<Corner> outline() {
        TextRow top = rows.get(0);
        TextRow low = rows.get(rows.size() - 1);
        return List.of(
                corner(top, -0.5, -1),
                corner(top, length() - 0.5, -1),
                corner(low, length() - 0.5, 1),
                corner(low, -0.5, 1));
    }

    private Corner corner(TextRow row, double i, int side) {
        double x = row.grid().at(i);
        double v = side * 0.65 * row.capital() * row.grid().step(i);
        return new Corner(x + lean * v, row.middle().at(x) + v);
    }
}
