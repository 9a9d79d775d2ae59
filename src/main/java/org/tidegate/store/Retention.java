package org.tidegate.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidegate.work.MessageId;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** What is kept, what falls due, and what is held back. */
public final class Retention {

    private static final String OPEN = "('held', 'to-read', 'waiting', 'read')";

    /** Someone still works on it, or needs it: of a split message any of its submissions. */
    static final String NEEDED = "EXISTS (SELECT 1 FROM submissions o WHERE (o.id = m.submission OR o.id IN"
            + " (SELECT p.submission FROM parts p WHERE p.message = m.id AND p.ended IS NULL)) AND (o.state IN " + OPEN
            + " OR o.id IN (SELECT h.submission FROM retention_holds h)))";

    private static final String TIME_IS_UP = " FROM messages m LEFT JOIN submissions s ON s.id = m.submission"
            + " WHERE m.wrapped_key IS NOT NULL AND ((m.shows = 'IDENTITY' AND m.taken < ?)"
            + " OR (m.shows IN ('IDENTITY', 'PHOTO') AND m.taken < ?) OR (s.state = 'aside' AND m.taken < ?) OR m.taken < ?)";

    /** A key belongs to the submission whose number its owner is; that names its first message. */
    private static final String KEYS = "SELECT k.owner AS owner FROM case_keys k"
            + " JOIN messages m ON m.id = k.owner % 1000000000000 LEFT JOIN submissions s ON s.id = k.owner"
            + " WHERE k.scope = ? AND m.taken < ? AND (s.id IS NULL OR s.state NOT IN " + OPEN + ")"
            + " AND k.owner NOT IN (SELECT h.submission FROM retention_holds h)"
            + " AND NOT EXISTS (SELECT 1 FROM messages l WHERE l.submission = k.owner AND l.taken >= ?)"
            + " ORDER BY k.owner LIMIT ?";

    private final Tx tx;

    Retention(Tx tx) {
        this.tx = tx;
    }

    /** What of a message decides how long it is kept. */
    public enum Shows {
        /** An identity document, or a picture of which nobody could tell whether it shows one. */
        IDENTITY,
        PHOTO,
        WORDS
    }

    /** The term of {@code retention.yaml} under which something is forgotten. */
    public enum Term {
        IDENTITY_PICTURES,
        PICTURES,
        CASSETTES,
        ASIDE,
        MESSAGES,
        RESULTS,
        FINGERPRINTS;

        /** As the ledger names it: {@code identity-pictures}. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** A message whose time is up. */
    public record Due(MessageId message, Term term) {}

    /** Kept beyond its time. */
    public record Hold(SubmissionId submission, String reasonCode, UserId who, Instant since) {}

    public void shows(MessageId id, Shows what) {
        tx.update("UPDATE messages SET shows = ? WHERE id = ?", what.name(), id.value());
    }

    /** Inspected before it was written down what they show. */
    public List<MessageId> unmarked(int most) {
        return tx.list(
                "SELECT id FROM messages WHERE shows IS NULL AND findings IS NOT NULL ORDER BY id LIMIT ?",
                r -> new MessageId(r.number("id")),
                most);
    }

    /** Messages whose time is up and that nobody needs, the oldest first. */
    public List<Due> due(Cutoffs c, int most) {
        return timeIsUp(c, "NOT " + NEEDED, most);
    }

    /** Messages whose time is up, but whose submission is open or held back. */
    public List<Due> overdue(Cutoffs c, int most) {
        return timeIsUp(c, NEEDED, most);
    }

    private List<Due> timeIsUp(Cutoffs c, String which, int most) {
        return tx.list(
                "SELECT m.id AS id, m.shows AS shows, m.taken AS taken, s.state AS state" + TIME_IS_UP + " AND " + which
                        + " ORDER BY m.taken, m.id LIMIT ?",
                r -> new Due(new MessageId(r.number("id")), term(r, c)),
                c.identityPictures(),
                c.pictures(),
                c.aside(),
                c.messages(),
                most);
    }

    private static Term term(Row r, Cutoffs c) throws java.sql.SQLException {
        Instant taken = r.instant("taken");
        String shows = r.maybeText("shows").orElse("");
        if (shows.equals("IDENTITY") && taken.isBefore(c.identityPictures())) {
            return Term.IDENTITY_PICTURES;
        }
        if (r.maybeText("state").filter("aside"::equals).isPresent() && taken.isBefore(c.aside())) {
            return Term.ASIDE;
        }
        return !shows.equals("WORDS") && !shows.isEmpty() && taken.isBefore(c.pictures())
                ? Term.PICTURES
                : Term.MESSAGES;
    }

    /** How many messages' time is up by then, needed or not. */
    public int dueBy(Cutoffs c) {
        return tx.first(
                        "SELECT COUNT(*) AS n" + TIME_IS_UP,
                        r -> r.small("n"),
                        c.identityPictures(),
                        c.pictures(),
                        c.aside(),
                        c.messages())
                .orElse(0);
    }

    /** Owners of keys of this scope under which nothing is needed that was taken since. */
    public List<Long> dueKeys(CaseKeys.Scope scope, Instant before, int most) {
        return tx.list(KEYS, r -> r.number("owner"), scope.name(), before, before, most);
    }

    /** Days before this one of which letters among ourselves are kept. */
    public List<Long> dueDays(LocalDate before, int most) {
        return tx.list(
                "SELECT owner FROM case_keys WHERE scope = 'SERVICE' AND owner < ? ORDER BY owner LIMIT ?",
                r -> r.number("owner"),
                before.toEpochDay(),
                most);
    }

    /** Messages taken before that time of which fingerprints are kept. */
    public List<MessageId> fingerprinted(Instant before, int most) {
        return tx.list(
                "SELECT DISTINCT p.message AS id FROM pictures p JOIN messages m ON m.id = p.message WHERE m.taken < ?"
                        + " ORDER BY p.message LIMIT ?",
                r -> new MessageId(r.number("id")),
                before,
                most);
    }

    public void dropFingerprints(MessageId id) {
        tx.update("DELETE FROM pictures WHERE message = ?", id.value());
    }

    /** Sealed bytes of forgotten messages that may still lie there. */
    public List<StoredMessage> undropped(int most) {
        List<MessageId> ids = tx.list(
                "SELECT id FROM messages WHERE wrapped_key IS NULL AND dropped IS NULL ORDER BY id LIMIT ?",
                r -> new MessageId(r.number("id")),
                most);
        List<StoredMessage> all = new ArrayList<>();
        ids.forEach(id -> tx.messages().find(id).ifPresent(all::add));
        return all;
    }

    public void dropped(MessageId id, Instant when) {
        tx.update("UPDATE messages SET dropped = ? WHERE id = ?", when, id.value());
    }

    /** @return false where it was held back already */
    public boolean hold(Hold h) {
        return tx.update(
                        "INSERT INTO retention_holds (submission, reason_code, who, made) VALUES (?, ?, ?, ?)"
                                + " ON CONFLICT DO NOTHING",
                        h.submission().value(),
                        h.reasonCode(),
                        h.who().value(),
                        h.since())
                == 1;
    }

    /** @return false where it was not held back */
    public boolean lift(SubmissionId id) {
        return tx.update("DELETE FROM retention_holds WHERE submission = ?", id.value()) == 1;
    }

    /** The oldest first. */
    public List<Hold> holds() {
        return tx.list(
                "SELECT submission, reason_code, who, made FROM retention_holds ORDER BY made, submission",
                r -> new Hold(
                        new SubmissionId(r.number("submission")),
                        r.text("reason_code"),
                        new UserId(r.text("who")),
                        r.instant("made")));
    }

    /** How much is kept. */
    public record Counts(
            int messages,
            int identity,
            int photos,
            int cassettes,
            int aside,
            int forgotten,
            int cases,
            int results,
            int fingerprints) {}

    public Counts counts() {
        return new Counts(
                count("messages WHERE wrapped_key IS NOT NULL"),
                count("messages WHERE wrapped_key IS NOT NULL AND shows = 'IDENTITY'"),
                count("messages WHERE wrapped_key IS NOT NULL AND shows = 'PHOTO'"),
                count("crops WHERE wrapped_key IS NOT NULL"),
                count("messages m JOIN submissions s ON s.id = m.submission WHERE m.wrapped_key IS NOT NULL"
                        + " AND s.state = 'aside'"),
                count("messages WHERE wrapped_key IS NULL"),
                count("case_keys WHERE scope = 'CASE'"),
                count("case_keys WHERE scope = 'RESULT'"),
                count("pictures"));
    }

    private int count(String what) {
        return tx.first("SELECT COUNT(*) AS n FROM " + what, r -> r.small("n")).orElse(0);
    }
}
