package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.List;

/** Candidates of a line by the token they start at; so many a token at most, so that work stays linear. */
final class Candidates {

    private static final int MOST_PER_TOKEN = 24;

    private final List<List<Candidate>> from = new ArrayList<>();

    Candidates(int tokens) {
        for (int i = 0; i < tokens; i++) {
            from.add(new ArrayList<>(4));
        }
    }

    void add(Candidate candidate) {
        List<Candidate> here = from.get(candidate.from());
        if (here.size() < MOST_PER_TOKEN) {
            here.add(candidate);
        }
    }

    /** The token may be a clinic. */
    boolean clinicAt(int token) {
        return from.get(token).stream().anyMatch(c -> c.field() == Candidate.Field.CLINIC);
    }

    List<Candidate> at(int token) {
        return from.get(token);
    }
}
