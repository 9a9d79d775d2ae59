package org.tidegate.examination.picture;

import java.util.List;
import org.tidegate.examination.picture.Regions.Region;

/** How much print lies on a flat thing: small dark marks that stand in rows, as letters do and as wood, cloth or noise seldom does. */
final class PrintMeter {

    private static final float[] DARKER = {0.08f, 0.16f};
    private static final double REACH = 0.016;
    private static final double LOWEST = 0.017;
    private static final double HIGHEST = 0.13;
    private static final double WIDEST = 0.2;

    /** More marks than a page of close print has: noise, that would take long to compare. */
    private static final int MOST_MARKS = 1500;

    private PrintMeter() {}

    /**
     * What was counted.
     *
     * @param marks that have others of their height beside them, along the length of the upright thing
     * @param inLongRows share of them that stand in rows as long and as full as a machine-readable zone's, 0–1
     */
    record Print(int marks, double inLongRows) {}

    /** Marks in rows on an upright thing. */
    static Print on(Pixels upright) {
        int w = upright.width();
        int h = upright.height();
        float[] luma = EdgeMap.smooth(upright.luma(), w, h);
        float[] dark = ThinDark.of(luma, w, h, (int) Math.round(REACH * w));
        Print most = new Print(0, 0);
        for (float darker : DARKER) {
            boolean[] mask = new boolean[dark.length];
            for (int i = 0; i < mask.length; i++) {
                mask[i] = dark[i] > darker;
            }
            List<Region> marks = Regions.of(mask, w, h, 4).stream()
                    .filter(r -> r.height() >= LOWEST * h
                            && r.height() <= HIGHEST * h
                            && r.width() <= WIDEST * w
                            && r.width() < 6 * r.height())
                    .limit(MOST_MARKS)
                    .toList();
            Print print = print(marks, w);
            most = print.marks > most.marks ? print : most;
        }
        return most;
    }

    private static Print print(List<Region> marks, int w) {
        List<Region> inRows = marks.stream().filter(m -> inRow(m, marks)).toList();
        long inLong = inRows.stream().filter(m -> longRow(m, inRows, w) > 0.5).count();
        return new Print(inRows.size(), inRows.isEmpty() ? 0 : (double) inLong / inRows.size());
    }

    /** How much a mark's row is as long and as full as a machine-readable zone's, 0–1. */
    private static double longRow(Region mark, List<Region> marks, int w) {
        int left = mark.left();
        int right = mark.right();
        int count = 0;
        for (Region other : marks) {
            if (level(mark, other)) {
                left = Math.min(left, other.left());
                right = Math.max(right, other.right());
                count++;
            }
        }
        return Body.within((double) (right - left) / w, 0.45, 0.75, 2, 3) * Body.within(count, 8, 18, 1000, 2000);
    }

    private static boolean level(Region mark, Region other) {
        return Math.abs(other.top() + other.bottom() - mark.top() - mark.bottom()) < 0.6 * mark.height();
    }

    private static boolean inRow(Region mark, List<Region> marks) {
        int beside = 0;
        for (Region other : marks) {
            int gap = Math.max(other.left() - mark.right(), mark.left() - other.right());
            boolean alike = other.height() > 0.6 * mark.height() && 0.6 * other.height() < mark.height();
            beside += gap > 0 && gap < 1.5 * mark.height() && level(mark, other) && alike ? 1 : 0;
        }
        return beside >= 2;
    }
}
