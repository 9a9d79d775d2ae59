package org.tidegate.store;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tidegate.work.MessageId;

/** By what messages see one another: the same test, one thread, the same picture. */
public final class Links {

    private final Tx tx;

    Links(Tx tx) {
        this.tx = tx;
    }

    /** How a link ties. */
    public enum Kind {
        /** The test that the message matches by itself. */
        TEST,
        /** A further test that a person split the message for. */
        PART,
        /** Keyed mark of its own Message-ID. */
        OWN_ID,
        /** Keyed mark of a Message-ID that it answers. */
        REFERS_TO,
        /** Keyed mark of the address in From. */
        SENDER
    }

    /** One tie of one message. */
    public record Link(Kind kind, String value) {}

    /** One picture of one message, its fingerprints as JSON, numbered in the order of keeping. */
    public record Picture(long id, MessageId message, String fingerprints) {}

    /** Replaces what the message is tied by. */
    public void replace(MessageId message, List<Link> links) {
        tx.update("DELETE FROM links WHERE message = ?", message.value());
        for (Link link : links) {
            tx.update(
                    "INSERT INTO links (message, kind, value) VALUES (?, ?, ?) ON CONFLICT DO NOTHING",
                    message.value(),
                    link.kind().name(),
                    link.value());
        }
    }

    public List<Link> of(MessageId message) {
        return tx.list(
                "SELECT kind, value FROM links WHERE message = ? ORDER BY kind, value",
                r -> new Link(Kind.valueOf(r.text("kind")), r.text("value")),
                message.value());
    }

    /** Messages with this link, in the order of taking. */
    public Set<MessageId> with(Kind kind, String value) {
        return new TreeSet<>(tx.list(
                "SELECT message FROM links WHERE kind = ? AND value = ?",
                r -> new MessageId(r.number("message")),
                kind.name(),
                value));
    }

    public void keepPicture(MessageId message, String path, String fingerprints) {
        tx.update(
                "INSERT INTO pictures (message, path, fingerprints) VALUES (?, ?, ?) ON CONFLICT DO NOTHING",
                message.value(),
                path,
                fingerprints);
    }

    /** Pictures kept after the given number, at most so many. */
    public List<Picture> picturesAfter(long id, int most) {
        return tx.list(
                "SELECT id, message, fingerprints FROM pictures WHERE id > ? ORDER BY id LIMIT ?",
                r -> new Picture(r.number("id"), new MessageId(r.number("message")), r.text("fingerprints")),
                id,
                most);
    }
}
