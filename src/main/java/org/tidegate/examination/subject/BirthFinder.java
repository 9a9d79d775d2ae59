package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.List;
import org.tidegate.rules.WordKind;

/** Dates of birth: a date whose year is far back, or any behind "born". */
final class BirthFinder {

    private static final int YOUNGEST = 3;

    private BirthFinder() {}

    /** Turns date candidates that start at the token into birth dates where they can be. */
    static void find(Line line, int at, int arrivalYear, Candidates out) {
        boolean stamp = line.isNumber(at - 1) && line.token(at - 1).digits() == 8;
        if (stamp) {
            return;
        }
        List<Candidate> births = new ArrayList<>();
        for (Candidate c : out.at(at)) {
            if (c.field() == Candidate.Field.DATE && c.value() instanceof StatedDate date) {
                boolean told = line.after(at, WordKind.BIRTH_LABEL);
                List<StatedDate.Option> old = date.options().stream()
                        .filter(o -> o instanceof StatedDate.Calendar k && k.year() > 0)
                        .map(o -> aged((StatedDate.Calendar) o, arrivalYear))
                        .filter(k -> told || arrivalYear - k.year() >= YOUNGEST)
                        .map(StatedDate.Option.class::cast)
                        .toList();
                if (!old.isEmpty()) {
                    births.add(new Candidate(Candidate.Field.BIRTH, at, c.to(), told ? -0.8 : 0, new StatedDate(old)));
                }
            }
        }
        births.forEach(out::add);
    }

    /** A two-digit year of a birth lies before the arrival. */
    private static StatedDate.Calendar aged(StatedDate.Calendar k, int arrivalYear) {
        int year = k.year() > arrivalYear ? k.year() - 100 : k.year();
        return new StatedDate.Calendar(year, k.month(), k.day(), k.cost());
    }
}
