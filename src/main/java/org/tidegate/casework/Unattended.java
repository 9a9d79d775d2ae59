package org.tidegate.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidegate.casework.Acting.Case;
import org.tidegate.casework.LetterWriter.Written;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.LeftReason;
import org.tidegate.work.LetterKind;
import org.tidegate.work.PolicyAct;
import org.tidegate.work.PolicyAct.Act;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.SuggestedReply;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/**
 * Acknowledges and asks by itself, day and night, within {@code unattended.yaml}. Each assessment is considered once, over all machines,
 * and what was done and why goes into the ledger with the rules' hash.
 */
public final class Unattended {

    private static final User POLICY = new User(UserId.POLICY, "policy", Set.of(), "", true);
    private static final int AT_A_TIME = 100;

    private final Store store;
    private final Acting acting;
    private final LetterDesk letters;
    private final Policy policy;
    private final PolicyFacts facts;

    Unattended(Store store, Acting acting, LetterDesk letters) {
        this.store = store;
        this.acting = acting;
        this.letters = letters;
        this.policy = new Policy(acting.rules().unattended());
        this.facts = new PolicyFacts(acting, letters);
    }

    /**
     * Considers what has not been considered, what is due first, and takes back what waited for an answer in vain.
     *
     * @return what was done; submissions that somebody has taken up are left for the next round
     */
    public List<PolicyAct> work() {
        takeBack();
        List<SubmissionId> open = store.read(tx -> tx.policyActs().toConsider(AT_A_TIME));
        List<PolicyAct> done = new ArrayList<>();
        open.forEach(
                id -> acting.<Optional<PolicyAct>>inTurn(tx -> consider(tx, id)).ifPresent(done::add));
        return done;
    }

    /** A person decides what becomes of a submission whose participant did not answer in time. */
    private void takeBack() {
        if (!store.<List<SubmissionId>>read(tx -> tx.waits().over(acting.now())).isEmpty()) {
            acting.inTurn(tx -> {
                List<SubmissionId> over = tx.waits().over(acting.now());
                over.forEach(id -> {
                    tx.waits().drop(id);
                    tx.submissions()
                            .find(id)
                            .filter(s -> s.state() == SubmissionState.WAITING)
                            .ifPresent(s -> held(tx, s));
                });
                return over.size();
            });
        }
    }

    private static void held(Tx tx, Submission s) {
        if (!tx.submissions().save(s.in(SubmissionState.HELD))) {
            throw new IllegalStateException(s.id() + " was changed by someone else within one turn");
        }
        tx.record("wait-over", UserId.POLICY, List.of(), Map.of("submission", s.id().toString()));
    }

    /** What another machine considered meanwhile, or somebody has taken up, is none of ours. */
    private Optional<PolicyAct> consider(Tx tx, SubmissionId id) {
        return tx.submissions()
                .find(id)
                .filter(s -> s.state() == SubmissionState.HELD || s.state() == SubmissionState.TO_READ)
                .filter(s -> tx.policyActs().find(id, s.assessment()).isEmpty())
                .filter(s -> tx.claims().of(id, acting.now()).isEmpty())
                .flatMap(s -> acting.reader()
                        .assessment(tx, s)
                        .map(a -> act(new Case(tx, s, a, UserId.POLICY, POLICY, acting.now()))));
    }

    private PolicyAct act(Case c) {
        Matter matter = acting.reader().matter(c.tx(), c.submission(), c.assessment());
        List<Discrepancy> holds = OpenHolds.of(c.tx(), c.id(), c.assessment());
        Policy.Decision decision = policy.decide(facts.of(c, matter, holds));
        if (decision instanceof Policy.Decision.Ask) {
            return ask(c, matter, holds);
        }
        if (decision instanceof Policy.Decision.Acknowledge a) {
            return acknowledge(c, matter, a.notAsked());
        }
        return leave(c, ((Policy.Decision.Leave) decision).why());
    }

    private PolicyAct ask(Case c, Matter matter, List<Discrepancy> holds) {
        Optional<SuggestedReply> reply =
                new RequestWriter(acting.rules()).suggest(matter, holds, matter.language(), c.now());
        if (reply.isEmpty()) {
            return leave(c, List.of(LeftReason.NO_TEXT));
        }
        SuggestedReply r = reply.get();
        long letter = letters.put(
                c,
                LetterKind.REQUEST,
                matter.bookedAddress().orElseThrow(),
                new Written(r.language(), r.subject(), r.text()),
                "asked-by-policy",
                r.notAfter());
        List<String> codes =
                holds.stream().map(Discrepancy::code).map(DiscrepancyCode::code).toList();
        PolicyAct act = record(c, Act.ASKED, codes, Optional.of(letter));
        c.move(SubmissionState.WAITING, "asked", codes);
        c.tx().waits().put(c.id(), c.now(), matter.deadlines().waitUntil(r.notAfter()));
        return act;
    }

    private PolicyAct acknowledge(Case c, Matter matter, List<LeftReason> notAsked) {
        Written written;
        try {
            written = letters.writer().plain(LetterKind.ACKNOWLEDGEMENT, matter, Optional.empty());
        } catch (IllegalArgumentException holeInTheLetter) {
            return leave(c, List.of(LeftReason.NO_TEXT));
        }
        long letter = letters.put(
                c,
                LetterKind.ACKNOWLEDGEMENT,
                matter.bookedAddress().orElseThrow(),
                written,
                "acknowledged-by-policy",
                Optional.of(matter.deadlines().answerBy(acting.rules())));
        return record(c, Act.ACKNOWLEDGED, codes(notAsked), Optional.of(letter));
    }

    private PolicyAct leave(Case c, List<LeftReason> why) {
        return record(c, Act.LEFT, codes(why), Optional.empty());
    }

    private static List<String> codes(List<LeftReason> why) {
        return why.stream().map(LeftReason::code).toList();
    }

    private PolicyAct record(Case c, Act what, List<String> codes, Optional<Long> letter) {
        PolicyAct act = new PolicyAct(
                c.id(),
                c.submission().assessment(),
                what,
                codes,
                letter,
                acting.rules().hash(),
                c.now());
        c.tx().policyActs().add(act);
        Map<String, String> rules = Map.of("rules", act.rules());
        Map<String, String> references = letter.map(l -> Map.of("rules", act.rules(), "letter", Long.toString(l)))
                .orElse(rules);
        c.record("policy-" + what.code(), codes, references);
        return act;
    }
}
