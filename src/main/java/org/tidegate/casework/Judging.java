package org.tidegate.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.Acting.Case;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.rules.CheckRule;
import org.tidegate.rules.RoleRules;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.work.Ending;
import org.tidegate.work.Judgement;
import org.tidegate.work.Judgement.Decision;
import org.tidegate.work.LetterKind;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.User;

/** People's decisions on what does not add up. */
public final class Judging {

    private final Acting acting;
    private final LetterDesk letters;

    Judging(Acting acting, LetterDesk letters) {
        this.acting = acting;
        this.letters = letters;
    }

    /**
     * Why a person decides.
     *
     * @param code one that {@code roles.yaml} lists for the decision
     * @param note in own words; required by the code {@code other}
     */
    public record Reason(String code, Optional<String> note) {

        public static Reason of(String code) {
            return new Reason(code, Optional.empty());
        }
    }

    /**
     * Accepts discrepancies: they do not stand in the way. Where nothing else does, the submission goes to be read. The person
     * needs a role that the check names in {@code judged_by}.
     */
    public ActionResult accept(User who, Ticket ticket, List<DiscrepancyCode> codes, Reason reason) {
        return acting.on(
                ticket,
                who,
                Permission.JUDGE,
                c -> refused(c, codes, Decision.ACCEPT, reason).orElseGet(() -> accept(c, codes, reason)));
    }

    private ActionResult accept(Case c, List<DiscrepancyCode> codes, Reason reason) {
        record(c, codes, Decision.ACCEPT, reason);
        List<Discrepancy> left = OpenHolds.of(c.tx(), c.id(), c.assessment());
        SubmissionState state = left.isEmpty() ? afterHolds(c) : c.submission().state();
        Submission moved = c.move(state, "discrepancies-accepted", codes(codes, reason));
        String words = left.isEmpty() ? "Nothing holds it any more." : left.size() + " more to decide.";
        return new ActionResult.Done(moved, Optional.empty(), words);
    }

    private static SubmissionState afterHolds(Case c) {
        return c.tx().readings().of(c.id()).isEmpty() ? SubmissionState.TO_READ : SubmissionState.READ;
    }

    /** The test does not count, for reasons of procedure: a letter says so, the submission is closed. */
    public ActionResult voidTest(User who, Ticket ticket, List<DiscrepancyCode> codes, Reason reason) {
        return end(who, ticket, codes, Decision.VOID, reason, Ending.Kind.VOID, LetterKind.VOIDED);
    }

    /** A new attempt on a second kit is needed: a letter says so, the submission is closed. */
    public ActionResult repeat(User who, Ticket ticket, List<DiscrepancyCode> codes, Reason reason) {
        return end(who, ticket, codes, Decision.REPEAT, reason, Ending.Kind.REPEAT, LetterKind.REPEAT);
    }

    private ActionResult end(
            User who,
            Ticket ticket,
            List<DiscrepancyCode> codes,
            Decision decision,
            Reason reason,
            Ending.Kind ending,
            LetterKind letter) {
        return acting.on(
                ticket,
                who,
                Permission.JUDGE,
                c -> refused(c, codes, decision, reason)
                        .or(() -> letters.refused(c, letter))
                        .orElseGet(() -> {
                            record(c, codes, decision, reason);
                            long number = letters.write(c, letter, reason.code());
                            Submission moved = close(c, ending, reason, codes);
                            return new ActionResult.Done(
                                    moved, Optional.of(number), "Closed; the letter goes out soon.");
                        }));
    }

    /** It needs neither reading nor letter; it leaves the queue. */
    public ActionResult setAside(User who, Ticket ticket, Reason reason) {
        return acting.on(ticket, who, Permission.TRIAGE, c -> {
            if (c.submission().urgent() && !Rights.isOneOf(who, judges(DiscrepancyCode.URGENT_WORDS))) {
                return new ActionResult.Forbidden("Urgent words are set aside by a reader or the clinical lead only.");
            }
            if (!c.submission().state().movedByAssessment() && c.submission().state() != SubmissionState.WAITING) {
                return closed(c);
            }
            Submission moved = close(c, Ending.Kind.SET_ASIDE, reason, List.of());
            return new ActionResult.Done(moved, Optional.empty(), "Set aside.");
        });
    }

    /**
     * Says which test the messages of the submission are for, and assesses them anew. Where that test has an open submission
     * already, they join it: the result then tells of that one.
     */
    public ActionResult relink(User who, Ticket ticket, TestKey test, Reason reason) {
        return acting.on(ticket, who, Permission.JUDGE, c -> {
            if (acting.reader().test(c.tx(), test).isEmpty()) {
                return new ActionResult.Refused("no-such-test", "The book has no test " + test + ".");
            }
            if (!c.submission().state().movedByAssessment() && c.submission().state() != SubmissionState.WAITING) {
                return closed(c);
            }
            return Sharing.refused(c, test).orElseGet(() -> relink(c, test, reason));
        });
    }

    private ActionResult relink(Case c, TestKey test, Reason reason) {
        if (c.submission().state() == SubmissionState.WAITING) {
            c.move(SubmissionState.HELD, "taken-out-of-waiting", List.of());
        }
        c.record("relinked", List.of(reason.code()), Map.of("test", test.toString()));
        Sharing.link(c, test);
        acting.assessAgain(c);
        return new ActionResult.Done(home(c), Optional.empty(), "Linked to " + test + ".");
    }

    /** The submission itself where it is a part still; else where the first message lives now. */
    private static Submission home(Case c) {
        return c.tx().personLinks()
                .part(c.id())
                .map(p -> c.fresh())
                .or(() -> c.tx().messages()
                        .find(c.submission().messages().get(0))
                        .flatMap(m -> m.submission())
                        .flatMap(s -> c.tx().submissions().find(s)))
                .orElse(c.submission());
    }

    /** Opens again what was closed without a result; it is assessed anew. */
    public ActionResult reopen(User who, Ticket ticket, Reason reason) {
        return acting.on(ticket, who, Permission.JUDGE, c -> {
            boolean released = c.tx().endings().of(c.id()).stream().anyMatch(e -> e.kind() == Ending.Kind.RELEASED);
            if (c.submission().state() != SubmissionState.CLOSED || released) {
                return new ActionResult.Refused(
                        "not-reopened", "Only what was closed without a result can be opened again.");
            }
            boolean held = !OpenHolds.of(c.tx(), c.id(), c.assessment()).isEmpty();
            c.move(held ? SubmissionState.HELD : afterHolds(c), "reopened", List.of(reason.code()));
            acting.assessAgain(c);
            return new ActionResult.Done(c.fresh(), Optional.empty(), "Open again.");
        });
    }

    private Optional<ActionResult> refused(Case c, List<DiscrepancyCode> codes, Decision decision, Reason reason) {
        if (c.submission().state() != SubmissionState.HELD) {
            return Optional.of(closed(c));
        }
        if (!allowed(decision, reason)) {
            return Optional.of(new ActionResult.Refused(
                    "reason", "The reason " + reason.code() + " does not fit this decision, or lacks its note."));
        }
        List<DiscrepancyCode> open = OpenHolds.of(c.tx(), c.id(), c.assessment()).stream()
                .map(Discrepancy::code)
                .toList();
        if (codes.isEmpty() || !open.containsAll(codes)) {
            return Optional.of(
                    new ActionResult.Refused("not-open", "There is nothing open to decide under that code."));
        }
        return codes.stream()
                .filter(code -> !Rights.isOneOf(c.user(), judges(code)))
                .findFirst()
                .map(code -> new ActionResult.Forbidden(
                        code.code() + " is judged by: " + String.join(", ", judges(code)) + "."));
    }

    private List<String> judges(DiscrepancyCode code) {
        return acting.rules().check(code).map(CheckRule::judgedBy).orElse(List.of());
    }

    private boolean allowed(Decision decision, Reason reason) {
        RoleRules.Decision wanted = RoleRules.Decision.valueOf(decision.name());
        boolean noteMissing = reason.code().equals("other")
                && reason.note().filter(n -> !n.isBlank()).isEmpty();
        return !noteMissing
                && acting.rules().roles().reasons().stream()
                        .anyMatch(r ->
                                r.code().equals(reason.code()) && r.decisions().contains(wanted));
    }

    private static ActionResult closed(Case c) {
        return new ActionResult.Refused(
                "state", c.id() + " is " + c.submission().state().code() + ": this cannot be done to it now.");
    }

    private static void record(Case c, List<DiscrepancyCode> codes, Decision decision, Reason reason) {
        codes.forEach(code -> c.tx().judgements()
                .append(new Judgement(
                        c.id(),
                        c.submission().assessment(),
                        code,
                        decision,
                        reason.code(),
                        c.who(),
                        c.now(),
                        reason.note())));
    }

    private static Submission close(Case c, Ending.Kind kind, Reason reason, List<DiscrepancyCode> codes) {
        c.tx().endings().append(new Ending(c.id(), kind, reason.code(), c.who(), c.now()));
        return c.move(SubmissionState.CLOSED, "closed-" + kind.code(), codes(codes, reason));
    }

    private static List<String> codes(List<DiscrepancyCode> codes, Reason reason) {
        List<String> all = new ArrayList<>();
        all.add(reason.code());
        codes.forEach(c -> all.add(c.code()));
        return all;
    }
}
