package org.tidegate.casework;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.casework.Acting.Case;
import org.tidegate.examination.timing.TrustedResults;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;
import org.tidegate.work.LeftReason;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.UserId;

/** Gathers what the policy decides on. */
final class PolicyFacts {

    private static final Duration DAY = Duration.ofDays(1);

    private final Acting acting;
    private final LetterDesk letters;
    private final Rules rules;

    PolicyFacts(Acting acting, LetterDesk letters) {
        this.acting = acting;
        this.letters = letters;
        this.rules = acting.rules();
    }

    Policy.Facts of(Case c, Matter matter, List<Discrepancy> holds) {
        List<Findings> messages = acting.reader().findings(c.tx(), c.submission());
        Instant leaves = c.now().plus(rules.service().undoDelay());
        return new Policy.Facts(
                c.submission().urgent(),
                holds.stream().map(Discrepancy::code).toList(),
                holds.stream().allMatch(d -> countsAfter(leaves, d, matter)),
                messages.stream().allMatch(this::dmarcPass),
                messages.stream().allMatch(Findings::coveringNoteOnly),
                refused(c, matter, messages),
                lettersToday(c, matter),
                c.tx().outbox().of(c.id()).stream().anyMatch(PolicyFacts::toParticipant),
                leaves.isBefore(matter.deadlines().answerBy(rules)));
    }

    private boolean countsAfter(Instant leaves, Discrepancy d, Matter matter) {
        return matter.deadlines().correctBy(d, rules).filter(leaves::isBefore).isPresent();
    }

    private boolean dmarcPass(Findings f) {
        return TrustedResults.dmarc(f.envelope(), rules.timing())
                .filter("pass"::equals)
                .isPresent();
    }

    private Optional<LeftReason> refused(Case c, Matter matter, List<Findings> messages) {
        Optional<String> to = matter.bookedAddress();
        if (to.isEmpty()) {
            return Optional.of(LeftReason.NO_ADDRESS);
        }
        if (!messages.stream().allMatch(AnswerRules::byAPerson)) {
            return Optional.of(LeftReason.NOT_A_PERSON);
        }
        return letters.answers()
                .ban(c.tx(), LetterKind.REQUEST, to.get(), messages, c.now())
                .map(b -> b.code().equals(AnswerRules.TOO_MANY) ? LeftReason.TOO_MANY : LeftReason.NOT_A_PERSON);
    }

    private int lettersToday(Case c, Matter matter) {
        return matter.bookedAddress()
                .map(to -> c.tx().outbox()
                        .countFrom(UserId.POLICY, letters.mark(to), c.now().minus(DAY)))
                .orElse(0);
    }

    private static boolean toParticipant(OutboxLetter l) {
        return !l.kind().internal()
                && l.state() != OutboxState.RECALLED
                && !l.state().failed();
    }
}
