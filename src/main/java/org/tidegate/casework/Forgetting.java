package org.tidegate.casework;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.tidegate.finding.Findings;
import org.tidegate.finding.PictureFinding;
import org.tidegate.store.CaseKeys.Scope;
import org.tidegate.store.Cutoffs;
import org.tidegate.store.Retention.Due;
import org.tidegate.store.Retention.Shows;
import org.tidegate.store.Retention.Term;
import org.tidegate.store.Store;
import org.tidegate.store.StoredCrop;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/**
 * Forgets what its time is up of, in batches. A key that is destroyed takes with it what was sealed under it; the sealed bytes
 * are taken away afterwards, and looked for again after a crash. What is open or held back is kept.
 */
public final class Forgetting {

    private static final int BATCH = 50;
    private static final Duration BETWEEN = Duration.ofMinutes(1);

    private final Store store;
    private final MessageVault vault;
    private final Assessing assessing;
    private final DeskConfig config;
    private Instant next = Instant.MIN;

    Forgetting(Store store, MessageVault vault, Assessing assessing, DeskConfig config) {
        this.store = store;
        this.vault = vault;
        this.assessing = assessing;
        this.config = config;
    }

    /**
     * Does one batch of what is due, and looks again after a minute where nothing was. For one thread.
     *
     * @return whether there may be more to do at once
     */
    public boolean work() {
        Instant now = config.clock().instant();
        if (now.isBefore(next)) {
            return false;
        }
        Cutoffs cutoffs = Cutoffs.at(
                now, config.rules().retention(), config.rules().timing().zone());
        int done = mark() + assessing.<Integer>inTurn(tx -> forget(tx, cutoffs)) + drop(now);
        next = done == 0 ? now.plus(BETWEEN) : now;
        return done > 0;
    }

    /** Works until nothing is due now. @return how many batches it took */
    public int drain() {
        next = Instant.MIN;
        int batches = 0;
        while (work()) {
            batches++;
        }
        return batches;
    }

    private int mark() {
        return store.write(tx -> {
            List<MessageId> unmarked = tx.retention().unmarked(BATCH);
            unmarked.forEach(id -> tx.messages()
                    .find(id)
                    .map(StoredMessage::whole)
                    .flatMap(vault::findings)
                    .ifPresent(f -> tx.retention().shows(id, shows(f))));
            return unmarked.size();
        });
    }

    /** A picture that nobody could look into may show an identity document: it is kept no longer than one. */
    static Shows shows(Findings findings) {
        List<PictureFinding> photos = findings.pictures().stream()
                .filter(p -> p.kind() != PictureFinding.Kind.DECORATION)
                .toList();
        if (photos.stream()
                .anyMatch(p -> p.document().present() || !p.document().judged())) {
            return Shows.IDENTITY;
        }
        return photos.isEmpty() ? Shows.WORDS : Shows.PHOTO;
    }

    private int forget(Tx tx, Cutoffs c) {
        List<Due> due = tx.retention().due(c, BATCH);
        due.forEach(d -> forget(tx, d.message(), UserId.DAEMON, d.term().code()));
        LocalDate firstDay = c.messages().atZone(config.rules().timing().zone()).toLocalDate();
        return due.size()
                + cassettes(tx, c)
                + keys(tx, Scope.CASE, c.messages(), Term.MESSAGES)
                + keys(tx, Scope.RESULT, c.results(), Term.RESULTS)
                + days(tx, firstDay)
                + fingerprints(tx, c.fingerprints());
    }

    /** Key, salt and findings are destroyed; the ledger stays whole. */
    static void forget(Tx tx, MessageId id, UserId who, String code) {
        tx.record("message-forgotten", who, List.of(code), Map.of("message", Long.toString(id.value())));
        tx.messages().forget(id);
    }

    private static int cassettes(Tx tx, Cutoffs c) {
        List<Due> due = tx.crops().due(c, BATCH);
        due.forEach(d -> cassettes(tx, d.message(), UserId.DAEMON, d.term().code()));
        return due.size();
    }

    /** The cassettes by themselves, which may outlive their message. */
    static void cassettes(Tx tx, MessageId id, UserId who, String code) {
        if (tx.crops().forget(id)) {
            tx.record("cassettes-forgotten", who, List.of(code), Map.of("message", Long.toString(id.value())));
        }
    }

    private static int keys(Tx tx, Scope scope, Instant before, Term term) {
        List<Long> owners = tx.retention().dueKeys(scope, before, BATCH);
        owners.forEach(owner -> {
            tx.caseKeys().destroy(scope, owner);
            String event = scope == Scope.CASE ? "case-forgotten" : "results-forgotten";
            tx.record(
                    event,
                    UserId.DAEMON,
                    List.of(term.code()),
                    Map.of("submission", new SubmissionId(owner).toString()));
        });
        return owners.size();
    }

    private static int days(Tx tx, LocalDate before) {
        List<Long> days = tx.retention().dueDays(before, BATCH);
        days.forEach(day -> {
            tx.caseKeys().destroy(Scope.SERVICE, day);
            tx.record(
                    "day-forgotten",
                    UserId.DAEMON,
                    List.of(Term.MESSAGES.code()),
                    Map.of("day", LocalDate.ofEpochDay(day).toString()));
        });
        return days.size();
    }

    private int fingerprints(Tx tx, Instant before) {
        List<MessageId> old = tx.retention().fingerprinted(before, BATCH);
        old.forEach(id -> {
            tx.retention().dropFingerprints(id);
            assessing.forgetPictures(id);
            tx.record(
                    "fingerprints-forgotten",
                    UserId.DAEMON,
                    List.of(Term.FINGERPRINTS.code()),
                    Map.of("message", Long.toString(id.value())));
        });
        return old.size();
    }

    private int drop(Instant now) {
        List<StoredMessage> lying = store.read(tx -> tx.retention().undropped(BATCH));
        for (StoredMessage m : lying) {
            vault.drop(m.blob());
            store.write(tx -> {
                tx.retention().dropped(m.id(), now);
                return true;
            });
        }
        return lying.size() + dropCassettes();
    }

    private int dropCassettes() {
        List<StoredCrop> lying = store.read(tx -> tx.crops().undropped(BATCH));
        for (StoredCrop c : lying) {
            vault.drop(c.blob());
            store.write(tx -> {
                tx.crops().dropped(c.id());
                return true;
            });
        }
        return lying.size();
    }
}
