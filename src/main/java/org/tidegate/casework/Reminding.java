package org.tidegate.casework;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;
import org.tidegate.casework.LetterWriter.Written;
import org.tidegate.casework.SilentTest.Step;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.store.NewLetter;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;
import org.tidegate.work.User;

/** Letters to those of whom nothing came while there is time. At most one for each test and slot. */
public final class Reminding {

    private final Store store;
    private final Acting acting;
    private final LetterDesk letters;
    private final NotHeardFrom silent;

    Reminding(Store store, Acting acting, LetterDesk letters, NotHeardFrom silent) {
        this.store = store;
        this.acting = acting;
        this.letters = letters;
        this.silent = silent;
    }

    /**
     * A reminder before it goes.
     *
     * @param to the booked address
     */
    public record Draft(TestRecord test, String to, String subject, String text, Instant notAfter) {}

    /**
     * What became of a reminder.
     *
     * @param letter number in the outbox; empty where none was written, the words then say why
     */
    public record Outcome(Optional<Long> letter, String words) {}

    /** What would go to each of these now; those that are not to be reminded are left out. */
    public List<Draft> drafts(List<TestKey> tests) {
        return store.read(tx -> silent.list(tx).stream()
                .filter(s -> tests.contains(s.test().key()) && s.step() == Step.REMIND)
                .map(this::draft)
                .toList());
    }

    /** Puts the reminders into the outbox, where they can be called back for a while; one that fails leaves the others. */
    public Map<TestKey, Outcome> remind(User who, List<TestKey> tests) {
        Map<TestKey, Outcome> all = new LinkedHashMap<>();
        tests.forEach(test -> all.put(test, acting.inTurn(tx -> remind(tx, who, test))));
        return all;
    }

    private Outcome remind(Tx tx, User who, TestKey key) {
        if (!acting.rights().may(who, Permission.TRIAGE)) {
            return refused(Acting.forbidden(who, Permission.TRIAGE).words());
        }
        Optional<SilentTest> found =
                silent.list(tx).stream().filter(s -> s.test().key().equals(key)).findFirst();
        if (found.isEmpty()) {
            return refused("Something came for " + key + " meanwhile, or its time is over.");
        }
        if (found.get().step() != Step.REMIND) {
            return refused(key + " is not reminded now: " + why(found.get().step()));
        }
        Draft draft = draft(found.get());
        return letters.answers()
                .ban(tx, LetterKind.REMINDER, draft.to(), List.of(), acting.now())
                .map(ban -> refused(ban.words()))
                .orElseGet(() -> queue(tx, who, draft));
    }

    private static String why(Step step) {
        return switch (step) {
            case REMIND, REMINDED -> "a reminder is written already.";
            case LOOK -> "something came that may be it.";
            case OBSERVE -> "it is not recorded when it began.";
            case CALL -> "no letter can reach the person.";
            case OVER -> "it would come too late.";
            case NOT_OBSERVED -> "nobody watched the test.";
        };
    }

    private Outcome queue(Tx tx, User who, Draft draft) {
        Instant now = acting.now();
        String language = draft.test().appointment().language().orElse("");
        long letter = letters.queue(
                tx,
                new NewLetter(
                        Optional.empty(),
                        LetterKind.REMINDER,
                        new LetterText(
                                draft.to(),
                                acting.rules().texts().languageFor(language),
                                draft.subject(),
                                draft.text(),
                                Optional.empty(),
                                List.of()),
                        letters.mark(draft.to()),
                        letters.messageId(),
                        "not-heard-from",
                        who.id(),
                        now,
                        now.plus(acting.rules().service().undoDelay()),
                        Optional.of(draft.notAfter())));
        tx.reminders().put(draft.test(), letter);
        return new Outcome(Optional.of(letter), "The reminder goes out soon; until then it can be called back.");
    }

    private Draft draft(SilentTest s) {
        Written written = letters.writer().notHeard(s.test(), s.windows().latest());
        return new Draft(
                s.test(),
                s.test().appointment().email().orElseThrow(),
                written.subject(),
                written.text(),
                silent.lastCall(s.windows()));
    }

    private static Outcome refused(String words) {
        return new Outcome(Optional.empty(), words);
    }
}
