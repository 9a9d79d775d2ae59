package org.tidegate.examination.picture.mrz;

import java.util.Arrays;
import org.tidegate.examination.picture.Luma;

/** Runs of pixels that are darker than their surroundings, row by row. */
final class DarkMarks {

    private static final int REACH = 12;

    /** Ink takes away at least this share of the light, and so many steps of 255. */
    private static final float SHARE = 0.15f;

    private static final float LEAST = 10;

    final int height;
    /** For each row the first of its runs; one more at the end. */
    final int[] rows;
    /** First pixel of each run. */
    int[] from = new int[8192];
    /** Last pixel of each run. */
    int[] to = new int[8192];

    private int count;

    private DarkMarks(int height) {
        this.height = height;
        this.rows = new int[height + 1];
    }

    int count() {
        return count;
    }

    static DarkMarks in(Luma luma) {
        DarkMarks marks = new DarkMarks(luma.height());
        float[] columns = new float[luma.width()];
        int held = 0;
        for (int y = 0; y < Math.min(REACH, luma.height()); y++) {
            add(luma, y, 1, columns);
            held++;
        }
        for (int y = 0; y < luma.height(); y++) {
            if (y + REACH < luma.height()) {
                add(luma, y + REACH, 1, columns);
                held++;
            }
            if (y - REACH > 0) {
                add(luma, y - REACH - 1, -1, columns);
                held--;
            }
            marks.rows[y] = marks.count;
            marks.row(luma, y, columns, held);
        }
        marks.rows[luma.height()] = marks.count;
        return marks;
    }

    private static void add(Luma luma, int y, int sign, float[] columns) {
        int i = y * luma.width();
        for (int x = 0; x < columns.length; x++) {
            columns[x] += sign * luma.at()[i + x];
        }
    }

    /** @param held rows that the column sums hold */
    private void row(Luma luma, int y, float[] columns, int held) {
        int w = columns.length;
        float sum = 0;
        for (int x = 0; x < Math.min(REACH, w); x++) {
            sum += columns[x];
        }
        int start = -1;
        for (int x = 0; x < w; x++) {
            sum += x + REACH < w ? columns[x + REACH] : 0;
            sum -= x - REACH > 0 ? columns[x - REACH - 1] : 0;
            int across = Math.min(w - 1, x + REACH) - Math.max(0, x - REACH) + 1;
            float mean = sum / (across * held);
            boolean dark = mean - luma.at()[y * w + x] > Math.max(LEAST, SHARE * mean);
            if (dark && start < 0) {
                start = x;
            } else if (!dark && start >= 0) {
                keep(start, x - 1);
                start = -1;
            }
        }
        if (start >= 0) {
            keep(start, w - 1);
        }
    }

    private void keep(int first, int last) {
        if (count == from.length) {
            from = Arrays.copyOf(from, 2 * count);
            to = Arrays.copyOf(to, 2 * count);
        }
        from[count] = first;
        to[count] = last;
        count++;
    }
}
