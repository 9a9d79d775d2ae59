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

    private final Tx tx;

    PersonLinks(Tx tx) {
        this.tx = tx;
    }

    /** A further test that a message is for: a submission of its own. */
    public record Part(SubmissionId submission, MessageId message, TestKey test) {}

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
                "INSERT INTO parts (submission, message, ref, attempt, who, made) VALUES (?, ?, ?, ?, ?, ?)",
                part.submission().value(),
                part.message().value(),
                part.test().ref(),
                part.test().attempt(),
                who.value(),
                when);
    }

    /** In the order in which they were made. */
    public List<Part> parts(MessageId message) {
        return tx.list(
                "SELECT submission, message, ref, attempt FROM parts WHERE message = ? ORDER BY submission",
                PersonLinks::readPart,
                message.value());
    }

    public Optional<Part> part(SubmissionId id) {
        return tx.first(
                "SELECT submission, message, ref, attempt FROM parts WHERE submission = ?",
                PersonLinks::readPart,
                id.value());
    }

    private static Part readPart(Row r) throws java.sql.SQLException {
        return new Part(
                new SubmissionId(r.number("submission")),
                new MessageId(r.number("message")),
                new TestKey(r.text("ref"), r.small("attempt")));
    }
}
