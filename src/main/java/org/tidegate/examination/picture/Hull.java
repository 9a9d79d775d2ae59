package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.tidegate.finding.PictureFinding.Corner;

/** Convex outline of points (Andrew 1979, monotone chain). */
final class Hull {

    private Hull() {}

    /** Clockwise on the screen (y downwards). */
    static List<Corner> of(List<Corner> points) {
        List<Corner> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(Corner::y).thenComparingDouble(Corner::x));
        return ofRows(sorted);
    }

    /** The same of points row by row, those of a row from left to right; the list is turned round. */
    static List<Corner> ofRows(List<Corner> sorted) {
        List<Corner> hull = half(sorted);
        Collections.reverse(sorted);
        hull.addAll(half(sorted));
        return hull;
    }

    /** One chain, without its last point. */
    private static List<Corner> half(List<Corner> sorted) {
        List<Corner> chain = new ArrayList<>();
        for (Corner p : sorted) {
            while (chain.size() >= 2 && Quad.cross(chain.get(chain.size() - 2), chain.get(chain.size() - 1), p) <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(p);
        }
        chain.remove(chain.size() - 1);
        return chain;
    }

    static double area(List<Corner> hull) {
        double twice = 0;
        for (int i = 0; i < hull.size(); i++) {
            Corner p = hull.get(i);
            Corner q = hull.get((i + 1) % hull.size());
            twice += p.x() * q.y() - q.x() * p.y();
        }
        return Math.abs(twice) / 2;
    }
}
