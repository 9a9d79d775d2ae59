package org.tidegate.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.store.CaseKeys.Scope;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** Letters on their way out, and what became of them. */
public final class Outbox {

    private static final String ALL =
            "SELECT id, submission, kind, state, scope, owner, sealed, address_mark, message_id, reason_code, who, made,"
                    + " not_before, not_after, attempted, finished, tries, outcome, version FROM outbox";

    private final Tx tx;

    Outbox(Tx tx) {
        this.tx = tx;
    }

    public long add(NewLetter l) {
        return tx.first(
                        "INSERT INTO outbox (submission, kind, state, scope, owner, sealed, address_mark, message_id,"
                                + " reason_code, who, made, not_before, not_after, tries, version)"
                                + " VALUES (?, ?, 'WAITING', ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0, 1) RETURNING id",
                        r -> r.number("id"),
                        l.submission().map(SubmissionId::value),
                        l.kind().name(),
                        l.scope().name(),
                        l.owner(),
                        tx.caseKeys().seal(l.scope(), l.owner(), place(l.messageId()), StoredJson.write(l.text())),
                        l.addressMark(),
                        l.messageId(),
                        l.reasonCode(),
                        l.who().value(),
                        l.made(),
                        l.notBefore(),
                        l.notAfter())
                .orElseThrow();
    }

    public Optional<OutboxLetter> find(long id) {
        return tx.first(ALL + " WHERE id = ?", this::read, id);
    }

    /** The one that may go out now and has waited longest; on PostgreSQL it stays locked until the transaction ends. */
    public Optional<OutboxLetter> next(Instant now) {
        return tx.first(
                ALL + " WHERE state = 'WAITING' AND not_before <= ? ORDER BY not_before, id LIMIT 1"
                        + tx.dialect().skipLocked(),
                this::read,
                now);
    }

    /** Sending that began before this moment and never came to an end. */
    public List<OutboxLetter> attemptingSinceBefore(Instant moment) {
        return tx.list(ALL + " WHERE state = 'ATTEMPTING' AND attempted < ? ORDER BY id", this::read, moment);
    }

    /** The letter with our own Message-ID. */
    public Optional<OutboxLetter> byMessageId(String messageId) {
        return tx.first(ALL + " WHERE message_id = ?", this::read, messageId);
    }

    public List<OutboxLetter> of(SubmissionId id) {
        return tx.list(ALL + " WHERE submission = ? ORDER BY id", this::read, id.value());
    }

    public List<OutboxLetter> inState(OutboxState state) {
        return tx.list(ALL + " WHERE state = ? ORDER BY id", this::read, state.name());
    }

    /** Made in {@code from … until}, the second exclusive. */
    public List<OutboxLetter> made(Instant from, Instant until) {
        return tx.list(ALL + " WHERE made >= ? AND made < ? ORDER BY id", this::read, from, until);
    }

    /** How many went, or may yet go, to the address since then. */
    public int countTo(String addressMark, Instant since) {
        return tx.first(
                        "SELECT COUNT(*) AS n FROM outbox WHERE address_mark = ? AND made >= ?"
                                + " AND state IN ('WAITING', 'ATTEMPTING', 'SENT', 'UNCERTAIN')",
                        r -> r.small("n"),
                        addressMark,
                        since)
                .orElse(0);
    }

    /** How many of this kind were written since then. */
    public int countOf(LetterKind kind, Instant since) {
        return tx.first(
                        "SELECT COUNT(*) AS n FROM outbox WHERE kind = ? AND made >= ?",
                        r -> r.small("n"),
                        kind.name(),
                        since)
                .orElse(0);
    }

    /** How many of these a user wrote to the address since then, whatever became of them. */
    public int countFrom(UserId who, String addressMark, Instant since) {
        return tx.first(
                        "SELECT COUNT(*) AS n FROM outbox WHERE address_mark = ? AND made >= ? AND who = ?",
                        r -> r.small("n"),
                        addressMark,
                        since,
                        who.value())
                .orElse(0);
    }

    /**
     * Moves a letter on, only where it still stands as it was read.
     *
     * @param notBefore when it may be tried again; only for {@code WAITING}
     * @return false where someone else was first
     */
    public boolean move(OutboxLetter from, OutboxState to, Instant when, Instant notBefore, Optional<String> outcome) {
        boolean attempting = to == OutboxState.ATTEMPTING;
        return tx.update(
                        "UPDATE outbox SET state = ?, not_before = ?, attempted = ?, finished = ?, tries = ?, outcome = ?,"
                                + " version = version + 1 WHERE id = ? AND version = ?",
                        to.name(),
                        notBefore,
                        attempting ? Optional.of(when) : from.attempted(),
                        attempting || to == OutboxState.WAITING ? Optional.empty() : Optional.of(when),
                        from.tries() + (attempting ? 1 : 0),
                        outcome,
                        from.id(),
                        from.version())
                == 1;
    }

    private static String place(String messageId) {
        return "letter " + messageId;
    }

    private OutboxLetter read(Row r) throws SQLException {
        return new OutboxLetter(
                r.number("id"),
                r.maybeNumber("submission").map(SubmissionId::new),
                LetterKind.valueOf(r.text("kind")),
                OutboxState.valueOf(r.text("state")),
                text(r),
                r.text("address_mark"),
                r.text("message_id"),
                r.text("reason_code"),
                new UserId(r.text("who")),
                r.instant("made"),
                r.instant("not_before"),
                r.maybeInstant("not_after"),
                r.maybeInstant("attempted"),
                r.maybeInstant("finished"),
                r.small("tries"),
                r.maybeText("outcome"),
                r.small("version"));
    }

    private Optional<LetterText> text(Row r) throws SQLException {
        Scope scope = Scope.valueOf(r.text("scope"));
        long owner = r.number("owner");
        String place = place(r.text("message_id"));
        return r.maybeBytes("sealed")
                .flatMap(bytes -> tx.caseKeys().open(scope, owner, place, bytes))
                .map(json -> StoredJson.read(json, LetterText.class));
    }
}
