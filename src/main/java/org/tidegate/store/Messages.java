package org.tidegate.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.work.MessageId;
import org.tidegate.work.SubmissionId;

/** Messages as taken, their sightings and their blobs where these are rows. */
public final class Messages {

    private static final String COLUMNS =
            "m.id AS id, m.wrapped_key AS wrapped_key, m.wrapped_salt AS wrapped_salt, m.blob AS blob,"
                    + " m.salted_hash AS salted_hash, m.size AS size, m.taken AS taken, m.delivered AS delivered,"
                    + " m.submission AS submission, m.findings AS findings, m.inspected AS inspected";
    private static final String OWN = "SELECT " + COLUMNS + ", m.own_pictures AS shown FROM messages m";
    private static final String SHARED =
            "SELECT " + COLUMNS + ", p.pictures AS shown FROM messages m JOIN parts p ON p.message = m.id";

    private final Tx tx;

    Messages(Tx tx) {
        this.tx = tx;
    }

    /** @return empty where a message of this mark is already there */
    public Optional<MessageId> insert(NewMessage m) {
        return tx.first(
                "INSERT INTO messages (mark, wrapped_key, wrapped_salt, blob, salted_hash, size, taken, delivered)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (mark) DO NOTHING RETURNING id",
                r -> new MessageId(r.number("id")),
                m.mark(),
                m.wrappedKey(),
                m.wrappedSalt(),
                m.blob(),
                m.saltedHash(),
                m.size(),
                m.taken(),
                m.delivered());
    }

    public Optional<MessageId> byMark(String mark) {
        return tx.first("SELECT id FROM messages WHERE mark = ?", r -> new MessageId(r.number("id")), mark);
    }

    /** How many were taken in {@code from … until}, the second exclusive. */
    public int takenIn(Instant from, Instant until) {
        return tx.first(
                        "SELECT COUNT(*) AS n FROM messages WHERE taken >= ? AND taken < ?",
                        r -> r.small("n"),
                        from,
                        until)
                .orElse(0);
    }

    /** As its own submission sees it: of a split message with the pictures that were left to that. */
    public Optional<StoredMessage> find(MessageId id) {
        return tx.first(OWN + " WHERE m.id = ?", Messages::read, id.value());
    }

    /** As this submission sees them, in the order of taking. */
    public List<StoredMessage> ofSubmission(SubmissionId id) {
        return tx.list(
                OWN + " WHERE m.submission = ? UNION ALL " + SHARED
                        + " WHERE p.submission = ? AND p.ended IS NULL ORDER BY id",
                Messages::read,
                id.value(),
                id.value());
    }

    /** In the order of taking, after the given one: a page for walking through all. */
    public List<StoredMessage> after(long id, int most) {
        return tx.list(OWN + " WHERE m.id > ? ORDER BY m.id LIMIT ?", Messages::read, id, most);
    }

    public long count() {
        return tx.first("SELECT COUNT(*) AS n FROM messages", r -> r.number("n"))
                .orElse(0L);
    }

    /** Records where the message was seen; seeing it there again changes nothing. */
    public boolean sighted(MessageId id, String account, String folder, long uidValidity, long uid, Instant seen) {
        return tx.update(
                        "INSERT INTO sightings (message, account, folder, uid_validity, uid, seen)"
                                + " VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING",
                        id.value(),
                        account,
                        folder,
                        uidValidity,
                        uid,
                        seen)
                == 1;
    }

    public long sightings(MessageId id) {
        return tx.first("SELECT COUNT(*) AS n FROM sightings WHERE message = ?", r -> r.number("n"), id.value())
                .orElse(0L);
    }

    /** @param sealed findings as sealed bytes */
    public void inspected(MessageId id, byte[] sealed, Instant when) {
        tx.update("UPDATE messages SET findings = ?, inspected = ? WHERE id = ?", sealed, when, id.value());
    }

    public void assign(MessageId id, Optional<SubmissionId> submission) {
        tx.update("UPDATE messages SET submission = ? WHERE id = ?", submission.map(SubmissionId::value), id.value());
    }

    /** @param pictures paths of those that the message's own submission keeps; all where empty */
    public void leave(MessageId id, Optional<List<String>> pictures) {
        tx.update("UPDATE messages SET own_pictures = ? WHERE id = ?", pictures.map(StoredJson::write), id.value());
    }

    /**
     * Destroys key, salt and findings: whatever copy of the blob remains cannot be opened any more. Fingerprints and cassettes by
     * themselves have terms of their own.
     */
    public void forget(MessageId id) {
        tx.update(
                "UPDATE messages SET wrapped_key = NULL, wrapped_salt = NULL, findings = NULL WHERE id = ?",
                id.value());
        tx.update(
                "UPDATE submissions SET version = version + 1 WHERE id = (SELECT submission FROM messages WHERE id = ?)"
                        + " OR id IN (SELECT submission FROM parts WHERE message = ? AND ended IS NULL)",
                id.value(),
                id.value());
        forgetShares(id);
    }

    /** Who had which picture of a forgotten message, once no cassette of it is left to be told whose it is. */
    void forgetShares(MessageId id) {
        String spent = "(SELECT m.id FROM messages m WHERE m.id = ? AND m.wrapped_key IS NULL"
                + " AND NOT EXISTS (SELECT 1 FROM crops c WHERE c.message = m.id AND c.wrapped_key IS NOT NULL))";
        tx.update("UPDATE messages SET own_pictures = NULL WHERE id IN " + spent, id.value());
        tx.update("UPDATE parts SET pictures = '[]' WHERE message IN " + spent, id.value());
    }

    private static StoredMessage read(Row r) throws SQLException {
        return new StoredMessage(
                new MessageId(r.number("id")),
                r.maybeBytes("wrapped_key"),
                r.maybeBytes("wrapped_salt"),
                r.text("blob"),
                r.text("salted_hash"),
                r.number("size"),
                r.instant("taken"),
                r.maybeInstant("delivered"),
                r.maybeNumber("submission").map(SubmissionId::new),
                r.maybeBytes("findings"),
                r.maybeInstant("inspected"),
                r.maybeText("shown").map(StoredJson::texts));
    }
}
