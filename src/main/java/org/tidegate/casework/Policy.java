package org.tidegate.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.rules.UnattendedRules;
import org.tidegate.work.LeftReason;

/** What may go out by itself (DESIGN 10); a pure decision on facts. When in doubt it is left to a person. */
final class Policy {

    private final UnattendedRules rules;

    Policy(UnattendedRules rules) {
        this.rules = rules;
    }

    /**
     * What the decision rests on.
     *
     * @param urgent words of distress or urgent symptoms were ever found, whatever a person thought of them
     * @param holds what still holds the submission
     * @param stillCounts whether each of the holds can still be mended when the letter gets there
     * @param dmarcPass whether our own host found {@code dmarc=pass} on every message
     * @param coveringNotes whether no message says more than a covering note
     * @param refused why nobody may write there at all; empty where one may
     * @param lettersToday how many letters the policy wrote to the address within a day
     * @param answeredBefore whether the participant was written to about this submission
     * @param promiseStands whether the promise that an acknowledgement makes can still be kept
     */
    record Facts(
            boolean urgent,
            List<DiscrepancyCode> holds,
            boolean stillCounts,
            boolean dmarcPass,
            boolean coveringNotes,
            Optional<LeftReason> refused,
            int lettersToday,
            boolean answeredBefore,
            boolean promiseStands) {}

    sealed interface Decision {
        /** Ask for all that is missing. */
        record Ask() implements Decision {}

        /** @param notAsked why it does not ask; empty where nothing is missing */
        record Acknowledge(List<LeftReason> notAsked) implements Decision {}

        record Leave(List<LeftReason> why) implements Decision {}
    }

    Decision decide(Facts f) {
        List<LeftReason> never = never(f);
        if (!never.isEmpty()) {
            return new Decision.Leave(never);
        }
        List<LeftReason> notAsked = f.holds().isEmpty() ? List.of() : notAsked(f);
        if (!f.holds().isEmpty() && notAsked.isEmpty()) {
            return new Decision.Ask();
        }
        List<LeftReason> silent = notAcknowledged(f);
        if (silent.isEmpty()) {
            return new Decision.Acknowledge(notAsked);
        }
        List<LeftReason> why = new ArrayList<>(notAsked);
        silent.stream().filter(r -> !why.contains(r)).forEach(why::add);
        return new Decision.Leave(why);
    }

    private List<LeftReason> never(Facts f) {
        List<LeftReason> why = new ArrayList<>();
        if (f.urgent() || f.holds().stream().anyMatch(this::leftToPeople)) {
            why.add(LeftReason.NEEDS_A_PERSON);
        }
        f.refused().ifPresent(why::add);
        if (rules.requireDmarcPass() && !f.dmarcPass()) {
            why.add(LeftReason.NOT_AUTHENTICATED);
        }
        if (rules.requireCoveringNote() && !f.coveringNotes()) {
            why.add(LeftReason.FREE_TEXT);
        }
        if (f.lettersToday() >= rules.lettersPerAddress() && !why.contains(LeftReason.TOO_MANY)) {
            why.add(LeftReason.TOO_MANY);
        }
        return why;
    }

    private boolean leftToPeople(DiscrepancyCode code) {
        return code == DiscrepancyCode.URGENT_WORDS || rules.leaveToPeople().contains(code);
    }

    private List<LeftReason> notAsked(Facts f) {
        if (!rules.ask()) {
            return List.of(LeftReason.TURNED_OFF);
        }
        if (!rules.askFor().containsAll(f.holds())) {
            return List.of(LeftReason.JUDGED);
        }
        return f.stillCounts() ? List.of() : List.of(LeftReason.TOO_LATE);
    }

    /** Beside a measured fault the words "we will look at your photo" would promise too much. */
    private List<LeftReason> notAcknowledged(Facts f) {
        List<LeftReason> why = new ArrayList<>();
        if (!rules.acknowledge()) {
            why.add(LeftReason.TURNED_OFF);
        }
        if (f.holds().stream().anyMatch(rules.askFor()::contains)) {
            why.add(LeftReason.NEEDS_A_PERSON);
        }
        if (f.answeredBefore()) {
            why.add(LeftReason.ANSWERED_BEFORE);
        }
        if (!f.promiseStands()) {
            why.add(LeftReason.PROMISE_PASSED);
        }
        return why;
    }
}
