package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.tidegate.render.OneKit;

/**
 * How often a cassette that is photographed again beside another card is found by what is written on it, and how many pairs of different cassettes of one kit
 * are taken for the same: {@code DuplicatesMeasure cassettes [cassettes] [first cassette]}, 230 from cassette 10000 unless said, two photos each, whose
 * pairs are over 100,000. All are written on in one drawn hand on one day: people's own hands differ more. Beside every fifth lies one without writing.
 * Cassettes 0 to 109 served for tuning.
 */
final class WritingMeasure {

    private static final KeyedSigns SIGNS = new KeyedSigns(new byte[16], Written.CELLS);
    private static final int UNMARKED = 5;

    /** What is written on one photographed cassette. */
    private record Print(int cassette, long[] bits) {}

    private final int within = LiveRules.read().pictures().sameWritingWithin();
    private final List<Print> prints = new ArrayList<>();
    private final List<Integer> same = new ArrayList<>();
    private final List<Integer> other = new ArrayList<>();
    private int photos;
    private int unmarked;
    private int madeUp;

    private WritingMeasure() {}

    static void main(String[] arguments) {
        int cassettes = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 230;
        int first = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 10_000;
        WritingMeasure measure = new WritingMeasure();
        for (int i = 0; i < cassettes; i++) {
            measure.add(first + i, 0);
            measure.add(first + i, 1);
            if (i % UNMARKED == 0) {
                measure.unmarked++;
                measure.madeUp += SeenCassettes.in(OneKit.photo(first + i, false, 2, OneKit.BESIDE))
                        .written()
                        .size();
            }
            if ((i + 1) % 10 == 0 || i + 1 == cassettes) {
                measure.print(i + 1);
            }
        }
    }

    private void add(int cassette, int shot) {
        photos++;
        for (float[] field : SeenCassettes.in(OneKit.photo(cassette, true, shot, OneKit.BESIDE))
                .written()) {
            Print print = new Print(cassette, HashWords.of(SIGNS.of(field)));
            for (Print before : prints) {
                int distance = HashWords.coarse(print.bits(), before.bits(), 0)
                        + HashWords.fine(print.bits(), before.bits(), 0);
                (before.cassette() == cassette ? same : other).add(distance);
            }
            prints.add(print);
        }
    }

    private void print(int cassettes) {
        long found = same.stream().filter(d -> d <= within).count();
        long falseAlarms = other.stream().filter(d -> d <= within).count();
        System.out.printf(
                Locale.ROOT,
                "%d cassettes, %d photos, %d with a print; found again %d of %d pairs of prints (%d cassettes); false alarms %d of %d pairs; "
                        + "unmarked %d, taken for marked %d%n",
                cassettes,
                photos,
                prints.size(),
                found,
                same.size(),
                cassettes,
                falseAlarms,
                other.size(),
                unmarked,
                madeUp);
        System.out.printf(Locale.ROOT, "  bits that differ: same %s; others %s%n", spread(same), spread(other));
    }

    private static String spread(List<Integer> distances) {
        int[] sorted = distances.stream().mapToInt(Integer::intValue).sorted().toArray();
        if (sorted.length == 0) {
            return "none";
        }
        int[] at = {
            0, sorted.length / 10_000, sorted.length / 100, sorted.length / 2, sorted.length * 9 / 10, sorted.length - 1
        };
        return "least, 0.01 %, 1 %, median, 90 %, most: "
                + Arrays.toString(Arrays.stream(at).map(i -> sorted[i]).toArray());
    }
}
