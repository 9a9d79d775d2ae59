package org.tidegate.store;

import java.sql.SQLException;
import java.util.List;
import org.tidegate.store.Retention.Due;
import org.tidegate.store.Retention.Term;
import org.tidegate.work.MessageId;

/** Cassettes by themselves: kept beside their messages, forgotten after a term of their own. */
public final class Crops {

    private static final String COLUMNS =
            "SELECT id, message, path, cassette, shape, wrapped_key, wrapped_salt, blob," + " salted_hash FROM crops";

    private static final String DUE = "SELECT DISTINCT m.id AS id, m.taken AS taken FROM crops c"
            + " JOIN messages m ON m.id = c.message LEFT JOIN submissions s ON s.id = m.submission"
            + " WHERE c.wrapped_key IS NOT NULL AND (m.taken < ? OR (s.state = 'aside' AND m.taken < ?))"
            + " AND NOT " + Retention.NEEDED + " ORDER BY m.taken, m.id LIMIT ?";

    private final Tx tx;

    Crops(Tx tx) {
        this.tx = tx;
    }

    /** @return false where that cassette is kept already: the bytes just sealed are not needed then */
    public boolean insert(MessageId message, NewCrop c) {
        return tx.update(
                        "INSERT INTO crops (message, path, cassette, shape, wrapped_key, wrapped_salt, blob, salted_hash)"
                                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING",
                        message.value(),
                        c.path(),
                        c.cassette(),
                        c.shape(),
                        c.wrappedKey(),
                        c.wrappedSalt(),
                        c.blob(),
                        c.saltedHash())
                == 1;
    }

    /** Those of a message that are not forgotten, in the order of its pictures. */
    public List<StoredCrop> of(MessageId message) {
        return tx.list(
                COLUMNS + " WHERE message = ? AND wrapped_key IS NOT NULL ORDER BY id", Crops::read, message.value());
    }

    /** Messages whose cassettes' time is up and that nobody needs, the oldest first. */
    public List<Due> due(Cutoffs c, int most) {
        return tx.list(
                DUE,
                r -> new Due(
                        new MessageId(r.number("id")),
                        r.instant("taken").isBefore(c.cassettes()) ? Term.CASSETTES : Term.ASIDE),
                c.cassettes(),
                c.aside(),
                most);
    }

    /**
     * Destroys their keys, and with a message that is forgotten already also who had which picture of it.
     *
     * @return whether there were any
     */
    public boolean forget(MessageId message) {
        boolean any = tx.update(
                        "UPDATE crops SET wrapped_key = NULL, wrapped_salt = NULL WHERE message = ? AND wrapped_key IS NOT NULL",
                        message.value())
                > 0;
        tx.messages().forgetShares(message);
        return any;
    }

    /** Whose sealed bytes may still lie there. */
    public List<StoredCrop> undropped(int most) {
        return tx.list(COLUMNS + " WHERE wrapped_key IS NULL ORDER BY id LIMIT ?", Crops::read, most);
    }

    /** Its sealed bytes are gone. */
    public void dropped(long id) {
        tx.update("DELETE FROM crops WHERE id = ? AND wrapped_key IS NULL", id);
    }

    private static StoredCrop read(Row r) throws SQLException {
        return new StoredCrop(
                r.number("id"),
                new MessageId(r.number("message")),
                r.text("path"),
                r.small("cassette"),
                r.text("shape"),
                r.maybeBytes("wrapped_key"),
                r.maybeBytes("wrapped_salt"),
                r.text("blob"),
                r.text("salted_hash"));
    }
}
