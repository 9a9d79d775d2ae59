package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes clues in order of trust. Where clues of one rank contradict each other, the belief splits into one for each maximal
 * consistent subset of them; what is concluded must hold in all.
 */
final class Solver {

    /** Subsets are tried one by one up to this many clues of a rank; beyond it later clues give way to earlier ones. */
    private static final int SPLIT_UP_TO = 10;

    private Solver() {}

    static List<Belief> take(List<Belief> beliefs, List<Constraint> oneRank) {
        if (oneRank.isEmpty()) {
            return beliefs;
        }
        List<Belief> next = new ArrayList<>();
        for (Belief belief : beliefs) {
            next.addAll(take(belief, oneRank));
        }
        return next;
    }

    private static List<Belief> take(Belief belief, List<Constraint> oneRank) {
        Belief all = belief.copy();
        List<Constraint> refused = believeInTurn(all, oneRank);
        if (refused.isEmpty() || oneRank.size() > SPLIT_UP_TO) {
            return List.of(all);
        }
        return maximalSubsets(belief, oneRank).stream()
                .map(subset -> believeSubset(belief, oneRank, subset))
                .toList();
    }

    private static List<Constraint> believeInTurn(Belief belief, List<Constraint> clues) {
        List<Constraint> refused = new ArrayList<>();
        for (Constraint c : clues) {
            List<Constraint> cycle = belief.believe(c);
            if (!cycle.isEmpty()) {
                belief.setAside(c, cycle);
                refused.add(c);
            }
        }
        return refused;
    }

    /** Bit sets of all maximal consistent subsets, the largest first. */
    private static List<Integer> maximalSubsets(Belief belief, List<Constraint> clues) {
        List<Integer> maximal = new ArrayList<>();
        int all = (1 << clues.size()) - 1;
        for (int size = clues.size(); size >= 0; size--) {
            for (int subset = all; subset >= 0; subset--) {
                if (Integer.bitCount(subset) == size && isNew(maximal, subset) && consistent(belief, clues, subset)) {
                    maximal.add(subset);
                }
            }
        }
        return maximal;
    }

    private static boolean isNew(List<Integer> maximal, int subset) {
        return maximal.stream().noneMatch(m -> (m & subset) == subset);
    }

    private static boolean consistent(Belief belief, List<Constraint> clues, int subset) {
        Belief trial = belief.copy();
        return members(clues, subset).stream().allMatch(c -> trial.believe(c).isEmpty());
    }

    private static Belief believeSubset(Belief belief, List<Constraint> clues, int subset) {
        Belief result = belief.copy();
        members(clues, subset).forEach(result::believe);
        for (Constraint c : members(clues, ~subset)) {
            result.setAside(c, result.copy().believe(c));
        }
        return result;
    }

    private static List<Constraint> members(List<Constraint> clues, int subset) {
        List<Constraint> members = new ArrayList<>();
        for (int i = 0; i < clues.size(); i++) {
            if ((subset >> i & 1) == 1) {
                members.add(clues.get(i));
            }
        }
        return members;
    }
}
