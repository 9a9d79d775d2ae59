package org.tidegate.casework;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.casework.SubmissionView.Past;
import org.tidegate.casework.SubmissionView.TakenMessage;
import org.tidegate.examination.Assessment;
import org.tidegate.examination.picture.CropShape;
import org.tidegate.message.Limits;
import org.tidegate.message.MessageReader;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.store.Store;
import org.tidegate.store.StoredAssessment;
import org.tidegate.store.StoredCrop;
import org.tidegate.store.StoredJson;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** The casebook as the store holds it. */
final class StoredCasebook implements Casebook {

    private static final String HOLD = "hold:";

    private final Store store;
    private final MessageVault vault;
    private final CaseReader reader;
    private final TriageQueue queue;

    StoredCasebook(Store store, MessageVault vault, CaseReader reader) {
        this.store = store;
        this.vault = vault;
        this.reader = reader;
        this.queue = new TriageQueue(new KnownCases(reader));
    }

    @Override
    public List<QueueRow> queue(Instant now) {
        return store.read(tx -> queue.rows(tx, now));
    }

    @Override
    public Optional<SubmissionView> submission(SubmissionId id, Instant now) {
        return store.read(tx -> tx.submissions().find(id).flatMap(s -> view(tx, s, now)));
    }

    private Optional<SubmissionView> view(Tx tx, Submission s, Instant now) {
        return reader.assessment(tx, s).map(a -> view(tx, s, a, now));
    }

    private SubmissionView view(Tx tx, Submission s, Assessment assessment, Instant now) {
        return new SubmissionView(
                s,
                messages(tx, s),
                assessment,
                reader.test(tx, assessment),
                tx.replies().suggested(s.id(), s.assessment()),
                history(tx, s.id()),
                OpenHolds.of(tx, s.id(), assessment),
                tx.judgements().of(s.id()),
                tx.claims().of(s.id(), now),
                tx.outbox().of(s.id()),
                tx.endings().of(s.id()),
                tx.waits().until(s.id()),
                kin(tx, s),
                crops(tx, s.id()).map(StoredCasebook::kept).toList());
    }

    /** The other submissions that hold a share of one of its messages. */
    private static List<Submission> kin(Tx tx, Submission s) {
        return s.messages().stream()
                .flatMap(m -> shares(tx, m))
                .filter(other -> !other.equals(s.id()))
                .distinct()
                .flatMap(other -> tx.submissions().find(other).stream())
                .toList();
    }

    private static Stream<SubmissionId> shares(Tx tx, MessageId id) {
        List<Part> parts = tx.personLinks().parts(id);
        return parts.isEmpty()
                ? Stream.empty()
                : Stream.concat(
                        tx.messages().find(id).flatMap(StoredMessage::submission).stream(),
                        parts.stream().map(Part::submission));
    }

    private List<TakenMessage> messages(Tx tx, Submission s) {
        List<TakenMessage> all = new ArrayList<>();
        for (StoredMessage m : tx.messages().ofSubmission(s.id())) {
            vault.findings(m).ifPresent(f -> all.add(new TakenMessage(m.id().value(), m.taken(), f)));
        }
        return List.copyOf(all);
    }

    /** Those that are for this submission, where a message is split. */
    private static Stream<StoredCrop> crops(Tx tx, SubmissionId id) {
        return tx.messages().ofSubmission(id).stream()
                .flatMap(m -> tx.crops().of(m.id()).stream().filter(c -> m.shows(c.path())));
    }

    private static KeptCrop kept(StoredCrop c) {
        CropShape shape = StoredJson.read(c.shape(), CropShape.class);
        return new KeptCrop(c.id(), c.message().value(), c.path(), c.cassette(), shape);
    }

    private static List<Past> history(Tx tx, SubmissionId id) {
        List<Past> all = new ArrayList<>();
        tx.assessments().of(id).forEach(a -> all.add(past(a)));
        Collections.reverse(all);
        return List.copyOf(all);
    }

    private static Past past(StoredAssessment a) {
        return new Past(
                a.number(),
                a.made(),
                StoredJson.read(a.content(), Assessment.class).disposition().name(),
                a.codes().stream()
                        .filter(c -> c.startsWith(HOLD))
                        .map(c -> c.substring(HOLD.length()))
                        .toList());
    }

    @Override
    public Optional<PictureBytes> picture(SubmissionId id, int message, String path) {
        Optional<StoredMessage> found = store.read(tx -> tx.messages().ofSubmission(id).stream()
                .skip(Math.max(message, 0))
                .findFirst());
        return found.filter(m -> m.shows(path))
                .flatMap(vault::raw)
                .flatMap(raw -> MessageReader.read(raw, Limits.standard()).attachments().stream()
                        .filter(a -> a.path().equals(path) && a.type().startsWith("image/"))
                        .findFirst()
                        .map(a -> new PictureBytes(a.type(), a.content())));
    }

    @Override
    public Optional<PictureBytes> cassette(SubmissionId id, long crop) {
        return store.read(tx -> crops(tx, id).filter(c -> c.id() == crop).findFirst())
                .flatMap(vault.crops()::png)
                .map(png -> new PictureBytes("image/png", png));
    }

    @Override
    public List<SubmissionId> find(String words) {
        Optional<SubmissionId> number = SubmissionId.parse(words);
        return store.read(tx -> number.isPresent()
                ? number.flatMap(tx.submissions()::find).stream()
                        .map(Submission::id)
                        .toList()
                : tx.submissions().ofTest(words).stream().map(Submission::id).toList());
    }

    @Override
    public Optional<User> user(UserId id) {
        return store.read(tx -> tx.users().find(id));
    }
}
