package org.tidegate.casework;

import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import org.tidegate.examination.Assessor;
import org.tidegate.examination.Inspected;
import org.tidegate.examination.OpenTests;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;
import org.tidegate.store.Store;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;
import org.tidegate.work.WorkItem;

/** Assesses whenever an input changed; one at a time, over all machines. */
final class Assessing {

    private final Store store;
    private final MessageVault vault;
    private final Assessor assessor;
    private final Clock clock;
    private final Rules rules;
    private final Book book = new Book();
    private final SeenPictures pictures;
    private final ReentrantLock turn = new ReentrantLock(true);

    Assessing(Store store, MessageVault vault, Rules rules, Clock clock) {
        this.store = store;
        this.vault = vault;
        this.rules = rules;
        this.clock = clock;
        this.assessor = new Assessor(rules);
        this.pictures = new SeenPictures(rules.pictures());
    }

    /** Stores what a message showed, places it, and ends the work item: one transaction, after the cassettes by themselves are durable. */
    void finished(StoredMessage message, Inspected seen, WorkItem item) {
        Findings findings = seen.findings();
        List<CropVault.Sealed> cassettes = vault.crops().keep(seen.crops());
        List<String> spare = inTurn(tx -> {
            vault.seal(message, findings).ifPresent(kept -> {
                tx.retention().shows(message.id(), Forgetting.shows(findings));
                tx.messages().inspected(message.id(), kept, clock.instant());
                pictures.keep(tx, message.id(), findings);
                SignsOfLife.read(tx, findings, clock.instant());
            });
            List<String> unused = KeepingCrops.keep(tx, message.id(), cassettes, seen.crops());
            fold(tx, message.id());
            tx.work().done(item);
            return unused;
        });
        spare.forEach(vault::drop);
    }

    /** Places and assesses a message again because something else changed. */
    void again(MessageId id, WorkItem item) {
        inTurn(tx -> {
            fold(tx, id);
            tx.work().done(item);
            return true;
        });
    }

    /** Runs a change of submissions while nothing else changes any, in one transaction. */
    <T> T inTurn(Function<Tx, T> body) {
        turn.lock();
        try {
            return store.write(tx -> {
                tx.lockAssessing();
                return body.apply(tx);
            });
        } catch (RuntimeException e) {
            pictures.reset();
            throw e;
        } finally {
            turn.unlock();
        }
    }

    /** Only within {@link #inTurn}, with the rows of the store. */
    void forgetPictures(MessageId id) {
        pictures.forget(id);
    }

    /** Places a message and all that depends on it; only within {@link #inTurn}. */
    void fold(Tx tx, MessageId start) {
        pictures.catchUp(tx);
        OpenTests tests = book.tests(tx);
        FoldView view = new FoldView(tx, vault);
        Ties ties = new Ties(tx, vault, pictures, view);
        Verdicts verdicts = new Verdicts(tx, assessor, tests, view, ties, pictures);
        Collection<Draft> drafts = new Fold(tx, assessor, tests, view, ties, verdicts).from(start);
        Keeping keeping = new Keeping(tx, view, tests, rules, clock.instant());
        drafts.forEach(d -> keeping.keep(d, verdicts));
    }
}
