package org.tidegate.casework;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tidegate.examination.Inspected;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.store.Store;
import org.tidegate.store.StoreException;
import org.tidegate.store.StoredMessage;
import org.tidegate.work.MessageId;
import org.tidegate.work.UserId;
import org.tidegate.work.WorkItem;

/** Draws one piece of work at a time and does it. Several may run at once, on several machines. */
public final class ExaminationWorker {

    private static final Logger LOG = LoggerFactory.getLogger(ExaminationWorker.class);
    private static final Duration CLAIM = Duration.ofMinutes(10);
    private static final Duration FIRST_PAUSE = Duration.ofSeconds(30);
    static final int MOST_TRIES = 5;
    private static final String LEFT = "left for a person";
    private static final Duration FOR_A_PERSON = Duration.ofDays(36_500);

    private final Store store;
    private final MessageVault vault;
    private final Assessing assessing;
    private final DeskConfig config;
    private final Clock clock;

    ExaminationWorker(Store store, MessageVault vault, Assessing assessing, DeskConfig config) {
        this.store = store;
        this.vault = vault;
        this.assessing = assessing;
        this.config = config;
        this.clock = config.clock();
    }

    /**
     * Does the work that is due first.
     *
     * @return false where there was none
     * @throws StoreException where the store cannot go on: the daemon stops
     */
    public boolean work() {
        Instant now = clock.instant();
        Optional<WorkItem> drawn = store.write(tx -> tx.work().draw(now, now.plus(CLAIM)));
        drawn.ifPresent(this::attempt);
        return drawn.isPresent();
    }

    /** Works until nothing is left to do now. @return how many pieces were done */
    public int drain() {
        int done = 0;
        while (work()) {
            done++;
        }
        return done;
    }

    private void attempt(WorkItem item) {
        try {
            perform(item);
        } catch (StoreException e) {
            throw e;
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
            putBack(item, e);
        }
    }

    private void perform(WorkItem item) {
        MessageId id = new MessageId(item.key());
        switch (item.kind()) {
            case INSPECT -> inspect(item, id);
            case ASSESS -> assessing.again(id, item);
        }
    }

    private void inspect(WorkItem item, MessageId id) {
        StoredMessage message = store.read(tx -> tx.messages().find(id)).orElseThrow();
        Optional<Inspected> seen = vault.raw(message)
                .map(raw -> config.inspection()
                        .inspect(raw, new DeliveryFacts(message.delivered(), vault.pictureKey(), config.decoders())));
        config.milestones().passed(Milestones.Boundary.INSPECTED);
        if (seen.isPresent()) {
            assessing.finished(message, seen.get(), item);
        } else {
            store.write(tx -> {
                tx.work().done(item);
                return true;
            });
        }
        config.milestones().passed(Milestones.Boundary.ASSESSED);
    }

    /** Not examined yet: tried again later, in the end left for a person. */
    private void putBack(WorkItem item, Throwable e) {
        boolean last = item.tries() + 1 >= MOST_TRIES;
        Duration pause = last ? FOR_A_PERSON : FIRST_PAUSE.multipliedBy(1L << item.tries());
        String problem = e.getClass().getSimpleName() + ": " + e.getMessage();
        LOG.warn("Examining message {} broke off, {}: {}.", item.key(), last ? LEFT : "tried again later", place(e));
        store.write(tx -> {
            if (last) {
                tx.record("examination-failed", UserId.DAEMON, List.of(), Map.of("message", Long.toString(item.key())));
            }
            tx.work().retry(item, clock.instant().plus(pause), problem);
            return true;
        });
    }

    /** Kind and place alone: what an exception says may quote the message, and a log is read by many. */
    private static String place(Throwable e) {
        return e.getClass().getSimpleName()
                + Arrays.stream(e.getStackTrace())
                        .filter(f -> f.getClassName().startsWith("org.tidegate."))
                        .findFirst()
                        .map(f -> " at " + f.getClassName() + ":" + f.getLineNumber())
                        .orElse("");
    }
}
