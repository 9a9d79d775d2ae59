package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.List;
import org.tidegate.rules.Clinic;

/** Clinics by code, name or alias; a typing slip in a word of four letters and more is forgiven. */
final class ClinicFinder implements Finder {

    private static final int SHORTEST_WITH_SLIP = 4;

    private record Alias(String code, String key) {}

    private final List<Alias> singles = new ArrayList<>();

    ClinicFinder(List<Clinic> clinics) {
        for (Clinic c : clinics) {
            add(c.code(), c.code());
            c.aliases().forEach(a -> add(c.code(), a));
        }
    }

    private void add(String code, String alias) {
        String key = Fold.key(alias);
        if (key.length() >= SHORTEST_WITH_SLIP && key.indexOf(' ') < 0) {
            singles.add(new Alias(code, key));
        }
    }

    @Override
    public void find(Line line, int at, Candidates out) {
        boolean exact = false;
        for (Lexicon.Match m : line.matches(at)) {
            if (m.meaning().clinic().isPresent()) {
                exact = true;
                emit(line, at, at + m.length(), m.meaning().clinic().get(), -0.2 * (m.length() - 1), out);
            }
        }
        if (!exact && line.isWord(at) && line.meaning(at).unknown()) {
            String key = line.token(at).key();
            singles.stream()
                    .filter(a -> key.length() >= SHORTEST_WITH_SLIP && Slips.oneApart(key, a.key()))
                    .findFirst()
                    .ifPresent(a -> emit(line, at, at + 1, a.code(), slipCost(line, at), out));
        }
    }

    /** A slip at the edge of what else is written is likelier than one among words of a name. */
    private static double slipCost(Line line, int at) {
        boolean edge = !line.isWord(at + 1) || !line.isWord(at - 1);
        boolean capitals = line.token(at).text().equals(line.token(at).text().toUpperCase(java.util.Locale.ROOT));
        return (edge ? 0.4 : 1.1) - (capitals ? 0.2 : 0);
    }

    private static void emit(Line line, int from, int to, String code, double cost, Candidates out) {
        int end = line.isSign(to, ".") && line.glued(to) ? to + 1 : to;
        out.add(new Candidate(Candidate.Field.CLINIC, from, end, cost, new Candidate.Words(code)));
        out.add(Candidate.skip(from, end, cost + 0.7));
    }
}
