package org.tidegate.examination.timing;

import java.util.List;
import org.tidegate.finding.Assumption;
import org.tidegate.rules.TimingRules;

/** The named assumptions of DESIGN 6. */
final class Assumptions {

    static final Assumption TEST_IN_SLOT = Assumption.of("test-in-slot");
    static final Assumption TIMER = Assumption.of("timer-within-1-min");
    static final Assumption STATED_IS_TIMER = Assumption.of("stated-is-timer");
    static final Assumption STATED_IN_PHONE_ZONE = Assumption.of("stated-in-phone-zone");
    static final Assumption SAME_PHONE = Assumption.of("same-phone");
    static final Assumption HANDED_OVER = Assumption.of("handed-over-promptly");
    static final Assumption CLINIC_ZONE = Assumption.of("phone-in-clinic-zone");
    static final Assumption FRESH_FIX = Assumption.of("fresh-fix");

    private Assumptions() {}

    static Assumption clockRight(String phone) {
        return new Assumption("clock-right", phone);
    }

    /** Only clues whose assumptions the rules allow. */
    static List<Constraint> allowed(List<Constraint> clues, TimingRules rules) {
        return clues.stream()
                .filter(c -> c.clue().leansOn().stream()
                        .allMatch(a -> rules.assumptions().contains(a.name())))
                .toList();
    }

    static Assumption serverHonest(String host) {
        return new Assumption("server-honest", host);
    }
}
