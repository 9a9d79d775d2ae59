package org.tidegate.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.work.MessageId;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** Which test a message is for, as a person said; and messages that are for several tests. */
public final class PersonLinks {

    private static final String PARTS =
            "SELECT submission, message, ref, attempt, pictures FROM parts WHERE ended IS NULL";

    private final Tx tx;

    PersonLinks(Tx tx) {
        this.tx = tx;
    }

    /**
     * A further test that a message is for: a submission of its own.
     *
     * @param pictures paths of the message's pictures that are for it
     */
    public record Part(SubmissionId submission, MessageId message, TestKey test, List<String> pictures) {

        public Part {
            pictures = List.copyOf(pictures);
        }

        public Part of(TestKey other) {
            return new Part(submission, message, other, pictures);
        }

        public Part with(List<String> others) {
            return new Part(submission, message, test, others);
        }
    }

    public void link(MessageId message, TestKey test, UserId who, Instant when) {
        tx.update(
                "INSERT INTO person_links (message, ref, attempt, who, made) VALUES (?, ?, ?, ?, ?)",
                message.value(),
                test.ref(),
                test.attempt(),
                who.value(),
                when);
    }

    /** The newest word on this message. */
    public Optional<TestKey> of(MessageId message) {
        return tx.first(
                "SELECT ref, attempt FROM person_links WHERE message = ? ORDER BY id DESC LIMIT 1",
                r -> new TestKey(r.text("ref"), r.small("attempt")),
                message.value());
    }

    public void part(Part part, UserId who, Instant when) {
        tx.update(
                "INSERT INTO parts (submission, message, ref, attempt, pictures, who, made) VALUES (?, ?, ?, ?, ?, ?, ?)",
                part.submission().value(),
                part.message().value(),
                part.test().ref(),
                part.test().attempt(),
                StoredJson.write(part.pictures()),
                who.value(),
                when);
    }

    /** A number that no part of the message ever had, so that nothing of an ended one is taken for this one's. */
    public SubmissionId nextPart(MessageId message) {
        int before = tx.first("SELECT COUNT(*) AS n FROM parts WHERE message = ?", r -> r.small("n"), message.value())
                .orElse(0);
        return SubmissionId.partOf(message, before + 1);
    }

    /** The part is for another test, or has other pictures. */
    public void change(Part part) {
        tx.update(
                "UPDATE parts SET ref = ?, attempt = ?, pictures = ? WHERE submission = ?",
                part.test().ref(),
                part.test().attempt(),
                StoredJson.write(part.pictures()),
                part.submission().value());
    }

    public void end(SubmissionId part, Instant when) {
        tx.update("UPDATE parts SET ended = ? WHERE submission = ?", when, part.value());
    }

    /** Those that are not ended, in the order in which they were made. */
    public List<Part> parts(MessageId message) {
        return tx.list(PARTS + " AND message = ? ORDER BY submission", PersonLinks::readPart, message.value());
    }

    /** Empty where the submission is no part, or is one no more. */
    public Optional<Part> part(SubmissionId id) {
        return tx.first(PARTS + " AND submission = ?", PersonLinks::readPart, id.value());
    }

    private static Part readPart(Row r) throws java.sql.SQLException {
        return new Part(
                new SubmissionId(r.number("submission")),
                new MessageId(r.number("message")),
                new TestKey(r.text("ref"), r.small("attempt")),
                StoredJson.texts(r.text("pictures")));
    }
}
