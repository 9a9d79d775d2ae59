package org.tidegate.casework;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.rules.HourRules.Notice;
import org.tidegate.rules.HourRules.OnCall;
import org.tidegate.rules.Rules;
import org.tidegate.rules.ServiceHours;
import org.tidegate.store.NewLetter;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** Tells the on-call person, again and again until somebody takes the submission up; a notice names nobody. */
public final class Waking {

    static final String BEFORE_SHIFT = "needed-before-shift";

    private final Store store;
    private final Acting acting;
    private final LetterDesk letters;
    private final Rules rules;
    private final ServiceHours hours;

    Waking(Store store, Acting acting, LetterDesk letters) {
        this.store = store;
        this.acting = acting;
        this.letters = letters;
        this.rules = acting.rules();
        this.hours = ServiceHours.of(rules.hours());
    }

    /** A submission to be told about, and why: a discrepancy's code or {@link #BEFORE_SHIFT}. */
    private record Call(SubmissionId id, String why) {}

    /** Puts the notices that are due into the outbox. @return the submissions that they are about */
    public List<SubmissionId> work() {
        return rules.hours().onCall().map(this::work).orElse(List.of());
    }

    private List<SubmissionId> work(OnCall onCall) {
        List<SubmissionId> told = new ArrayList<>();
        for (Call call : store.<List<Call>>read(tx -> calls(tx, onCall))) {
            if (acting.<Boolean>inTurn(tx -> tell(tx, call, onCall))) {
                told.add(call.id());
            }
        }
        return told;
    }

    /** One call a submission: the urgent one first. */
    private List<Call> calls(Tx tx, OnCall onCall) {
        Instant now = acting.now();
        boolean open = hours.open(now);
        Map<SubmissionId, Call> calls = new TreeMap<>();
        if (!open || onCall.inHours()) {
            for (DiscrepancyCode code : rules.unattended().wakeFor()) {
                tx.submissions().heldFor(code).forEach(s -> calls.putIfAbsent(s.id(), new Call(s.id(), code.code())));
            }
        }
        if (!open && onCall.beforeEmbarkation()) {
            hours.nextStart(now).map(start -> tx.submissions().neededIn(now, start)).orElse(List.of()).stream()
                    .map(Submission::id)
                    .forEach(id -> calls.putIfAbsent(id, new Call(id, BEFORE_SHIFT)));
        }
        calls.values().removeIf(c -> quiet(tx, c.id(), onCall));
        return List.copyOf(calls.values());
    }

    /** Somebody is at it, or was told not long ago. */
    private boolean quiet(Tx tx, SubmissionId id, OnCall onCall) {
        Instant last = acting.now().minus(onCall.againAfter());
        return tx.claims().of(id, acting.now()).isPresent()
                || tx.outbox().of(id).stream()
                        .anyMatch(
                                l -> l.kind() == LetterKind.ON_CALL && l.made().isAfter(last));
    }

    private boolean tell(Tx tx, Call call, OnCall onCall) {
        Optional<Submission> found = tx.submissions().find(call.id());
        if (found.isEmpty() || quiet(tx, call.id(), onCall) || !stillSo(tx, found.get(), call.why())) {
            return false;
        }
        Notice notice = call.why().equals(BEFORE_SHIFT) ? onCall.embarkation() : onCall.urgent();
        long letter = letters.queue(tx, letter(found.get(), call.why(), notice, onCall.address()));
        tx.record(
                "policy-woke",
                UserId.POLICY,
                List.of(call.why()),
                Map.of(
                        "submission", call.id().toString(),
                        "letter", Long.toString(letter),
                        "rules", rules.hash()));
        return true;
    }

    /** A person may have accepted it, or moved it on, in the meantime. */
    private boolean stillSo(Tx tx, Submission s, String why) {
        if (why.equals(BEFORE_SHIFT)) {
            return s.state().waitsForAPerson();
        }
        return acting.reader()
                .assessment(tx, s)
                .filter(a -> s.state().waitsForAPerson())
                .filter(a -> OpenHolds.of(tx, s.id(), a).stream()
                        .anyMatch(d -> d.code().code().equals(why)))
                .isPresent();
    }

    private NewLetter letter(Submission s, String why, Notice notice, String address) {
        Map<String, String> values = values(s);
        String text = notice.paragraphs().stream().map(p -> p.fill(values)).collect(Collectors.joining("\n\n"));
        return letters.internal(
                Optional.of(s.id()),
                LetterKind.ON_CALL,
                new LetterText(
                        address,
                        rules.texts().languageFor(""),
                        notice.subject().fill(values),
                        text + "\n",
                        Optional.empty(),
                        List.of()),
                why,
                acting.now());
    }

    private Map<String, String> values(Submission s) {
        Instant now = acting.now();
        Map<String, String> values = new TreeMap<>();
        values.put("ref", s.id().toString());
        values.put("link", rules.hours().consoleAddress() + "/submissions/" + s.id().value());
        values.put("service", rules.service().name());
        values.put("urgent_number", rules.service().urgentNumber());
        values.put("received", LetterValues.clockOn(s.arrived(), now, rules));
        values.put(
                "needed_by",
                s.neededBy().map(t -> LetterValues.clockOn(t, now, rules)).orElse("–"));
        values.put(
                "shift_start",
                hours.nextStart(now)
                        .map(t -> LetterValues.clockOn(t, now, rules))
                        .orElse("–"));
        return values;
    }
}
