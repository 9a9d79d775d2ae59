package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tidegate.examination.picture.Regions;

/** Finds the lines of evenly set letters on a patch: the one through its middle and its neighbours. */
final class RowFinder {

    private static final int LEAST = 10;
    private static final double CLOSEST = 1.2 * Patch.CAPITAL;
    private static final double FARTHEST = 4.5 * Patch.CAPITAL;
    private static final double BAND = 0.35 * Patch.CAPITAL;

    private final List<Mark> marks;
    private final List<TextRow> rows = new ArrayList<>();

    private RowFinder(List<Mark> marks) {
        this.marks = marks;
    }

    /** From the top down; none where the middle holds no such line. */
    static List<TextRow> in(Ink ink) {
        RowFinder finder = new RowFinder(marks(ink));
        Straight seed = new Straight(ink.height() / 2.0, 0).refined(finder.marks, Patch.CAPITAL, 6);
        if (finder.add(seed)) {
            finder.beside(seed, -1);
            finder.beside(seed, 1);
        }
        finder.rows.sort(Comparator.comparingDouble(r -> r.middle().at(ink.width() / 2.0)));
        return finder.rows;
    }

    private static List<Mark> marks(Ink ink) {
        List<Mark> marks = new ArrayList<>();
        for (Regions.Region r : Regions.of(ink.mask(), ink.width(), ink.height(), 12)) {
            boolean letter = r.height() > 0.4 * Patch.CAPITAL
                    && r.height() < 1.7 * Patch.CAPITAL
                    && r.width() < 5 * Patch.CAPITAL;
            if (letter) {
                marks.add(new Mark((r.left() + r.right()) / 2.0, (r.top() + r.bottom()) / 2.0, r.width(), r.height()));
            }
        }
        return marks;
    }

    /** Goes outwards from a line, to the next one twice. */
    private void beside(Straight from, int side) {
        Straight now = from;
        for (int step = 0; step < 2; step++) {
            Optional<Straight> next = densest(now, side).filter(this::add);
            if (next.isEmpty()) {
                return;
            }
            now = next.get();
        }
    }

    /** The line, parallel at first, that holds the most marks on that side. */
    private Optional<Straight> densest(Straight from, int side) {
        double[] off = marks.stream()
                .mapToDouble(m -> side * from.off(m))
                .filter(o -> o > CLOSEST && o < FARTHEST)
                .sorted()
                .toArray();
        int best = 0;
        double place = 0;
        for (int i = 0, j = 0; i < off.length; i++) {
            while (off[i] - off[j] > BAND) {
                j++;
            }
            if (i - j + 1 > best) {
                best = i - j + 1;
                place = (off[i] + off[j]) / 2;
            }
        }
        return best < LEAST
                ? Optional.empty()
                : Optional.of(
                        new Straight(from.at0() + side * place, from.slope()).refined(marks, 0.7 * Patch.CAPITAL, 6));
    }

    private boolean add(Straight middle) {
        List<Mark> line = marks.stream()
                .filter(m -> Math.abs(middle.off(m)) < 0.4 * Patch.CAPITAL)
                .toList();
        return PitchGrid.of(line)
                .map(grid -> rows.add(TextRow.of(middle, grid, line)))
                .orElse(false);
    }
}
