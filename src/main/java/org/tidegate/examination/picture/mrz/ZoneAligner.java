package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Moves the rows of a zone so that its characters stand where characters of their kind stand in their cell: first what each may be is guessed,
 * then place and size follow from all of a row together.
 */
final class ZoneAligner {

    private static final double[] NEAR = {0.2, 0.1};

    private final List<InkMoments[]> expected = new ArrayList<>();

    ZoneAligner(List<float[][]> fonts) {
        for (float[][] font : fonts) {
            InkMoments[] moments = new InkMoments[font.length];
            for (int g = 0; g < font.length; g++) {
                moments[g] = InkMoments.of(font[g], GlyphSheet.WIDTH, GlyphSheet.HEIGHT);
            }
            expected.add(moments);
        }
    }

    /**
     * @param cells of the zone, in the order of rows
     * @param glyphs what each may be, in the same order
     * @param turned whether the document is the other way up
     */
    ZoneGrid aligned(ZoneGrid zone, CellWindow[] cells, int font, int[] glyphs, boolean turned) {
        int n = zone.length();
        List<TextRow> rows = new ArrayList<>();
        for (int row = 0; row < zone.rows().size(); row++) {
            rows.add(aligned(
                    zone.rows().get(row),
                    Arrays.copyOfRange(cells, row * n, row * n + n),
                    Arrays.stream(glyphs, row * n, row * n + n)
                            .mapToObj(g -> turned ? expected.get(font)[g].turned() : expected.get(font)[g])
                            .toList()));
        }
        return new ZoneGrid(List.copyOf(rows), zone.lean());
    }

    private TextRow aligned(TextRow row, CellWindow[] cells, List<InkMoments> places) {
        int n = cells.length;
        double[] dx = new double[n];
        double[] dy = new double[n];
        double[] size = new double[n];
        for (int i = 0; i < n; i++) {
            InkMoments is = InkMoments.of(cells[i].ink(), CellWindow.COLUMNS, CellWindow.ROWS);
            InkMoments should = places.get(i);
            dx[i] = (is.x() - should.x()) * CellWindow.PITCHES;
            dy[i] = (is.y() - should.y()) * CellWindow.CAPITALS * row.capital();
            size[i] = is.spread() / should.spread();
        }
        double[] across = trend(dx);
        double[] down = trend(dy);
        PitchGrid grid = row.grid();
        double step = grid.step(n / 2.0);
        double slope = down[1];
        double rise = down[0] * step - slope * grid.at(0);
        Arrays.sort(size);
        double larger = Math.max(0.85, Math.min(1.18, size[n / 2]));
        return new TextRow(
                new Straight(row.middle().at0() + rise, row.middle().slope() + slope),
                grid.moved(across[0] * step, across[1] * step),
                row.capital() * larger);
    }

    /** A straight line through the values, first value and rise a place, in steps; what is far off is left away. */
    private static double[] trend(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double[] line = {sorted[sorted.length / 2], 0};
        for (double near : NEAR) {
            line = trend(values, line, near);
        }
        return line;
    }

    private static double[] trend(double[] values, double[] line, double near) {
        double n = 0;
        double si = 0;
        double sv = 0;
        double sii = 0;
        double siv = 0;
        for (int i = 0; i < values.length; i++) {
            if (Math.abs(values[i] - line[0] - line[1] * i) < near) {
                n++;
                si += i;
                sv += values[i];
                sii += (double) i * i;
                siv += i * values[i];
            }
        }
        double det = n * sii - si * si;
        if (n < values.length / 3.0 || det == 0) {
            return line;
        }
        double rise = (n * siv - si * sv) / det;
        return new double[] {(sv - rise * si) / n, rise};
    }
}
