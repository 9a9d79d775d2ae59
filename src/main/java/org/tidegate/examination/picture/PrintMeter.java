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

    private PrintMeter() {}

    /** Marks that have others of their height beside them, along the length of the upright thing. */
    static int marksInRows(Pixels upright) {
        int w = upright.width();
        int h = upright.height();
        float[] luma = EdgeMap.smooth(upright.luma(), w, h);
        float[] dark = ThinDark.of(luma, w, h, (int) Math.round(REACH * w));
        int most = 0;
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
                    .toList();
            most = Math.max(
                    most, (int) marks.stream().filter(m -> inRow(m, marks)).count());
        }
        return most;
    }

    private static boolean inRow(Region mark, List<Region> marks) {
        int beside = 0;
        for (Region other : marks) {
            int gap = Math.max(other.left() - mark.right(), mark.left() - other.right());
            boolean level = Math.abs(other.top() + other.bottom() - mark.top() - mark.bottom()) < 0.6 * mark.height();
            boolean alike = other.height() > 0.6 * mark.height() && 0.6 * other.height() < mark.height();
            beside += gap > 0 && gap < 1.5 * mark.height() && level && alike ? 1 : 0;
        }
        return beside >= 2;
    }
}
