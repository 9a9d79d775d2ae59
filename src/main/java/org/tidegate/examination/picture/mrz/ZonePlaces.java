package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tidegate.examination.picture.Luma;

/** Where zones may stand: long lines that have another one like them beside. */
final class ZonePlaces {

    private static final int MOST = 4;
    private static final int MOST_STRANDS = 400;

    /** A line of 30 characters is about 30 of its heights long; half of it is enough to find the rest. */
    private static final double LONG = 15;

    private ZonePlaces() {}

    /** Longest first; one for each zone. */
    static List<Strand> in(Luma luma) {
        List<Strand> lines = joined(StrandFinder.in(luma));
        List<Strand> places = new ArrayList<>();
        for (Strand s : lines) {
            boolean seen = places.stream().anyMatch(p -> covers(p, s));
            if (!seen
                    && s.length() > LONG * s.height()
                    && lines.stream().anyMatch(o -> isBeside(s, o))
                    && places.size() < MOST) {
                places.add(s);
            }
        }
        return places;
    }

    private static List<Strand> joined(List<Strand> pieces) {
        List<Strand> lines = new ArrayList<>();
        for (Strand piece : pieces.subList(0, Math.min(MOST_STRANDS, pieces.size()))) {
            boolean taken = false;
            for (int i = 0; i < lines.size() && !taken; i++) {
                if (lines.get(i).continues(piece)) {
                    lines.set(i, lines.get(i).joined(piece));
                    taken = true;
                }
            }
            if (!taken) {
                lines.add(piece);
            }
        }
        lines.sort(Comparator.comparingDouble(Strand::length).reversed());
        return lines;
    }

    private static boolean isBeside(Strand s, Strand other) {
        double off = Math.abs(s.across(other));
        return s.isParallel(other, 0.09)
                && off > 1.2 * s.height()
                && off < 5 * s.height()
                && other.height() > 0.6 * s.height()
                && other.height() < 1.7 * s.height()
                && other.length() > 0.4 * s.length()
                && Math.abs(s.along(other)) < 0.4 * s.length();
    }

    private static boolean covers(Strand place, Strand s) {
        return place.isParallel(s, 0.15)
                && Math.abs(place.across(s)) < 6 * place.height()
                && Math.abs(place.along(s)) < place.length() / 2 + s.height();
    }
}
