package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * One clock's clues side by side: a new row only where a label would run into another.
 *
 * @param name whose clock it is
 */
record LaneRows(String name, List<List<Placed>> rows) {

    private static final int SIZE = 12;
    private static final int GAP = 6;

    /**
     * A clue with its places across the drawing, in pixels.
     *
     * @param label where its words begin
     */
    record Placed(DrawnClue clue, int from, int to, int label, String words) {

        private int left() {
            return Math.min(from, label);
        }

        private int right() {
            return Math.max(to, label + TextFit.width(words, SIZE));
        }

        private boolean clear(Placed other) {
            return left() > other.right() + GAP || other.left() > right() + GAP;
        }
    }

    /** @param clues of one clock */
    static LaneRows of(String name, List<DrawnClue> clues, TimeScale scale, Function<DrawnClue, String> words) {
        List<List<Placed>> rows = new ArrayList<>();
        for (DrawnClue c : clues) {
            Placed placed = place(c, scale, words.apply(c));
            rows.stream()
                    .filter(row -> row.stream().allMatch(placed::clear))
                    .findFirst()
                    .orElseGet(() -> {
                        List<Placed> row = new ArrayList<>();
                        rows.add(row);
                        return row;
                    })
                    .add(placed);
        }
        return new LaneRows(name, rows);
    }

    /** Words stand behind the interval where they fit, else before it, else at the right edge. */
    private static Placed place(DrawnClue c, TimeScale scale, String words) {
        int from = c.from().map(scale::x).orElse(0);
        int to = Math.max(from + 4, c.to().map(scale::x).orElse(scale.width()));
        int wide = TextFit.width(words, SIZE);
        int behind = to + GAP;
        int before = from - GAP - wide;
        int label = behind + wide <= scale.width() ? behind : before >= 0 ? before : Math.max(0, scale.width() - wide);
        return new Placed(c, from, Math.min(to, scale.width()), label, words);
    }
}
