package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Covers of a line by candidates that do not overlap, the cheapest first: a beam over its tokens from left to right. */
final class Cover {

    /** Partial covers kept at each token. */
    private static final int BEAM = 24;

    /** A cover so much dearer than the best one up to the same token never catches up: more than a name and a time are worth. */
    private static final double HOPELESS = 9;

    private static final Comparator<Part> BY_COST = Comparator.comparingDouble(Part::cost);

    private Cover() {}

    /** A cover up to a token, as a chain back to the start. */
    private record Part(
            double cost,
            int mask,
            @Nullable Candidate last,
            @Nullable Part before) {

        Part with(Candidate c) {
            return new Part(cost + c.cost(), mask | c.field().bit(), c, this);
        }
    }

    /**
     * A cover of the whole line.
     *
     * @param parts without what was skipped, in the order of the line
     */
    record Whole(double cost, List<Candidate> parts) {}

    static List<Whole> best(Candidates candidates, int tokens) {
        List<List<Part>> at = new ArrayList<>();
        for (int i = 0; i <= tokens; i++) {
            at.add(new ArrayList<>());
        }
        at.get(0).add(new Part(0, 0, null, null));
        for (int i = 0; i < tokens; i++) {
            List<Part> here = kept(at.get(i));
            for (Candidate c : candidates.at(i)) {
                List<Part> there = at.get(c.to());
                for (Part p : here) {
                    if ((p.mask() & c.field().bit()) == 0) {
                        there.add(p.with(c));
                    }
                }
            }
            at.set(i, List.of());
        }
        return kept(at.get(tokens)).stream().map(Cover::whole).toList();
    }

    private static List<Part> kept(List<Part> parts) {
        double best = Double.MAX_VALUE;
        for (Part p : parts) {
            best = Math.min(best, p.cost());
        }
        List<Part> near = new ArrayList<>(parts.size());
        for (Part p : parts) {
            if (p.cost() <= best + HOPELESS) {
                near.add(p);
            }
        }
        near.sort(BY_COST);
        return near.size() > BEAM ? near.subList(0, BEAM) : near;
    }

    private static Whole whole(Part end) {
        List<Candidate> parts = new ArrayList<>();
        for (Part p = end; p != null && p.last() != null; p = p.before()) {
            if (p.last().field() != Candidate.Field.SKIP) {
                parts.add(0, p.last());
            }
        }
        return new Whole(end.cost(), parts);
    }
}
