package org.tidegate.casework;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidegate.booking.TestRecord;
import org.tidegate.booking.TestRecord.Observed;
import org.tidegate.casework.SilentTest.Step;
import org.tidegate.examination.timing.TestWindows;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.SubmissionId;

/** Tests of which nothing came although their window is open or over. */
public final class NotHeardFrom {

    /** How long a test is shown after its window. */
    public static final Duration SHOWN = Duration.ofHours(24);

    /** What can still be saved first, by what presses; then the newest. */
    private static final Comparator<SilentTest> ORDER = Comparator.comparing((SilentTest s) -> s.step() == Step.OVER)
            .thenComparing(NotHeardFrom::pressing)
            .thenComparing(s -> s.test().key().toString());

    private final Store store;
    private final Acting acting;

    NotHeardFrom(Store store, Acting acting) {
        this.store = store;
        this.acting = acting;
    }

    /** In the order in which they press. */
    public List<SilentTest> list() {
        return store.read(this::list);
    }

    /** How many messages are not examined yet: each may be the one that is missed. */
    public long notExamined() {
        return store.<Long>read(tx -> tx.work().waiting());
    }

    List<SilentTest> list(Tx tx) {
        Set<String> heard = tx.submissions().heardFrom();
        Unsure unsure = Unsure.of(tx, acting.reader());
        List<SilentTest> all = new ArrayList<>();
        for (TestRecord test : tx.tests().book().tests()) {
            if (!heard.contains(test.key().toString())) {
                silent(tx, test, unsure).ifPresent(all::add);
            }
        }
        all.sort(ORDER);
        return List.copyOf(all);
    }

    private Optional<SilentTest> silent(Tx tx, TestRecord test, Unsure unsure) {
        Instant now = acting.now();
        return acting.rules()
                .protocol(test.kit())
                .map(p -> TestWindows.of(test, p, acting.rules().timing()))
                .filter(w -> !w.earliest().from().isAfter(now))
                .filter(w -> w.latest().sendBy().plus(SHOWN).isAfter(now))
                .map(w -> {
                    List<SubmissionId> perhaps = unsure.about(test);
                    Optional<OutboxLetter> reminder =
                            tx.reminders().letter(test).flatMap(tx.outbox()::find);
                    return new SilentTest(test, w, perhaps, reminder, step(test, w, perhaps, reminder));
                });
    }

    private Step step(TestRecord test, TestWindows w, List<SubmissionId> perhaps, Optional<OutboxLetter> reminder) {
        if (!lastCall(w).isAfter(acting.now())) {
            return Step.OVER;
        }
        if (reminder.filter(l -> l.state() != OutboxState.RECALLED).isPresent()) {
            return reminder.get().state().failed() ? Step.CALL : Step.REMINDED;
        }
        if (test.observed() == Observed.NO) {
            return Step.NOT_OBSERVED;
        }
        if (!perhaps.isEmpty()) {
            return Step.LOOK;
        }
        if (!w.timed()) {
            return Step.OBSERVE;
        }
        return test.appointment().email().isPresent() ? Step.REMIND : Step.CALL;
    }

    /** Until when a letter can still save the test: the answer must be on its way a little before the limit. */
    Instant lastCall(TestWindows w) {
        return w.latest().sendBy().minus(acting.rules().service().correctionReserve());
    }

    private static long pressing(SilentTest s) {
        long limit = s.windows().latest().sendBy().toEpochMilli();
        return s.step() == Step.OVER ? -limit : limit;
    }
}
