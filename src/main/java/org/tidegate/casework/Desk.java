package org.tidegate.casework;

import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import org.tidegate.mailbox.Outgoing;
import org.tidegate.store.RowBlobs;
import org.tidegate.store.Store;
import org.tidegate.store.StoreLocation;
import org.tidegate.vault.BlobStore;
import org.tidegate.vault.DurableFiles;
import org.tidegate.vault.FileBlobs;
import org.tidegate.vault.MasterKey;

/** The wired room: one a process. */
public final class Desk implements AutoCloseable {

    private final Store store;
    private final MessageVault vault;
    private final IntakeService intake;
    private final Assessing assessing;
    private final CaseReader reader;
    private final Acting acting;
    private final LetterDesk letters;
    private final DeskConfig config;

    private Desk(DeskConfig config, Store store, MessageVault vault) {
        this.config = config;
        this.store = store;
        this.vault = vault;
        this.intake = new IntakeService(store, vault, config.rules(), config.clock(), config.milestones());
        this.assessing = new Assessing(store, vault, config.rules(), config.clock());
        this.reader = new CaseReader(vault, new Book(), config.rules());
        this.acting = new Acting(assessing, reader, config.rules(), config.clock());
        this.letters = new LetterDesk(reader, vault, config.rules());
    }

    /**
     * Opens keys, store and blobs, making what is missing.
     *
     * @throws IOException where the folder cannot be used or the keys do not fit the store
     * @throws org.tidegate.store.StoreException where the database cannot be opened
     */
    public static Desk open(DeskConfig config) throws IOException {
        Path folder = config.dataFolder();
        DurableFiles keys = new DurableFiles(config.files(), folder.resolve("keys"));
        MasterKey master = MasterKey.in(keys, new SecureRandom());
        Store store = Store.open(config.location(), master, config.clock());
        try {
            return new Desk(config, store, new MessageVault(master, blobs(config, store)));
        } catch (IOException | RuntimeException e) {
            store.close();
            throw e;
        }
    }

    private static BlobStore blobs(DeskConfig config, Store store) throws IOException {
        if (config.location() instanceof StoreLocation.Server) {
            return new RowBlobs(store);
        }
        return new FileBlobs(
                new DurableFiles(config.files(), config.dataFolder().resolve("blobs")));
    }

    public IntakeService intake() {
        return intake;
    }

    /** Workers may run side by side; each call gives one. */
    public ExaminationWorker worker() {
        return new ExaminationWorker(store, vault, assessing, config);
    }

    /**
     * Frees the work that an earlier run drew and did not end. On a server nothing is freed: another machine may be at it, and
     * its claims run out by themselves.
     *
     * @return how many pieces were freed
     */
    public int takeUpAgain() {
        if (config.location() instanceof StoreLocation.Server) {
            return 0;
        }
        return store.write(tx -> tx.work().free(config.clock().instant(), ExaminationWorker.MOST_TRIES));
    }

    /** What people look at. */
    public Casebook casebook() {
        return new StoredCasebook(store, vault, reader);
    }

    /** Taking a submission up before answering it. */
    public Claiming claiming() {
        return new Claiming(store, acting);
    }

    /** Accepting, voiding, repeating, setting aside, relinking, opening again. */
    public Judging judging() {
        return new Judging(acting, letters);
    }

    /** The letter that shows how the times were judged. */
    public Explaining explaining() {
        return new Explaining(acting, letters, drawings());
    }

    /** One message among several tests. */
    public Splitting splitting() {
        return new Splitting(acting);
    }

    /** Drafts and replies. */
    public Replying replying() {
        return new Replying(store, acting, letters);
    }

    /** Readings and result letters. */
    public ReadingDesk reading() {
        return new ReadingDesk(store, acting, letters);
    }

    /** What is on its way out; calling back. */
    public OutboxDesk outbox() {
        return new OutboxDesk(store, acting, letters);
    }

    /** Sends what is due. One at a time: its caller is one thread. */
    public Sending sending(Outgoing outgoing) {
        return new Sending(acting, letters, outgoing);
    }

    /** How long ago sending must have begun to count as broken off: at once here, on a server another machine may be at it. */
    public Duration sendingBrokenOff() {
        return config.location() instanceof StoreLocation.Server ? Sending.LONGEST : Duration.ZERO;
    }

    /** Answers by itself what the rules let it. One at a time: its caller is one thread. */
    public Unattended unattended() {
        return new Unattended(store, acting, letters);
    }

    /** Tells the on-call person. One at a time: its caller is one thread. */
    public Waking waking() {
        return new Waking(store, acting, letters);
    }

    /** Mail among ourselves. */
    public Notices notices() {
        return new Notices(store, acting, letters);
    }

    /** Quarantined lots and outages. */
    public Registering registers() {
        return new Registering(store, acting);
    }

    /** Tests of which nothing came. */
    public NotHeardFrom notHeardFrom() {
        return new NotHeardFrom(store, acting);
    }

    /** Letters to those of whom nothing came. */
    public Reminding reminding() {
        return new Reminding(store, acting, letters, notHeardFrom());
    }

    /** Honest new times for those who will wait. */
    public NewTimes newTimes() {
        return new NewTimes(acting, letters);
    }

    /** The observer's records. */
    public Observing observing() {
        return new Observing(acting);
    }

    /** Tests done again on a second kit. */
    public Repeating repeating() {
        return new Repeating(store, acting);
    }

    /** Who comes in. */
    public SignIns signIns() {
        return new SignIns(store);
    }

    /** The clocks of a submission, drawn. */
    public Drawings drawings() {
        return new Drawings(store, reader, new Book(), config.rules());
    }

    /** Who may do what. */
    public Rights rights() {
        return acting.rights();
    }

    public BookImport books() {
        return new BookImport(store, config.clock());
    }

    public MessageVault vault() {
        return vault;
    }

    /** For reading what is kept; changes go through the services. */
    public Store store() {
        return store;
    }

    /** Forgets what its time is up of. One at a time: its caller is one thread. */
    public Forgetting forgetting() {
        return new Forgetting(store, vault, assessing, config);
    }

    /** What is kept and until when; forgetting now, holding back. */
    public Retaining retaining() {
        return new Retaining(store, acting);
    }

    @Override
    public void close() {
        store.close();
    }
}
