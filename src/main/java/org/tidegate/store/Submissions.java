package org.tidegate.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/** Submissions as they stand. */
public final class Submissions {

    private static final String ALL =
            "SELECT id, state, test, urgent, arrived, due, savable, needed_by, assessment, version"
                    + " FROM submissions";

    private final Tx tx;

    Submissions(Tx tx) {
        this.tx = tx;
    }

    public Optional<Submission> find(SubmissionId id) {
        return tx.first(ALL + " WHERE id = ?", this::read, id.value());
    }

    /** In two statements however many there are. */
    public List<Submission> inStates(Set<SubmissionState> states) {
        String marks = String.join(", ", Collections.nCopies(states.size(), "?"));
        Object[] codes = states.stream().map(SubmissionState::code).sorted().toArray();
        Map<Long, List<MessageId>> messages = new HashMap<>();
        tx.list(
                        "SELECT s.id AS home, m.id AS id FROM messages m JOIN submissions s ON s.id = m.submission"
                                + " WHERE s.state IN (" + marks + ") UNION ALL"
                                + " SELECT s.id AS home, p.message AS id FROM parts p JOIN submissions s ON s.id = p.submission"
                                + " WHERE p.ended IS NULL AND s.state IN (" + marks + ") ORDER BY id",
                        r -> Map.entry(r.number("home"), new MessageId(r.number("id"))),
                        Stream.concat(Arrays.stream(codes), Arrays.stream(codes))
                                .toArray())
                .forEach(e -> messages.computeIfAbsent(e.getKey(), k -> new ArrayList<>())
                        .add(e.getValue()));
        return tx.list(
                ALL + " WHERE state IN (" + marks + ") ORDER BY due, id",
                r -> read(r, messages.getOrDefault(r.number("id"), List.of())),
                codes);
    }

    /** Held for this discrepancy, by the codes of the assessment that stands. */
    public List<Submission> heldFor(DiscrepancyCode code) {
        return tx.list(
                "SELECT s.id, s.state, s.test, s.urgent, s.arrived, s.due, s.savable, s.needed_by, s.assessment, s.version"
                        + " FROM submissions s JOIN assessments a ON a.submission = s.id AND a.number = s.assessment"
                        + " WHERE s.state = 'held' AND ',' || a.codes || ',' LIKE ? ORDER BY s.id",
                this::read,
                "%,hold:" + code.code() + ",%");
    }

    /** How many in this state arrived in {@code from … until}, the second exclusive. */
    public int arrivedIn(SubmissionState state, Instant from, Instant until) {
        return tx.first(
                        "SELECT COUNT(*) AS n FROM submissions WHERE state = ? AND arrived >= ? AND arrived < ?",
                        r -> r.small("n"),
                        state.code(),
                        from,
                        until)
                .orElse(0);
    }

    /** What waits for a person and is needed in {@code from … until}, the second exclusive; what is needed first comes first. */
    public List<Submission> neededIn(Instant from, Instant until) {
        return tx.list(
                ALL + " WHERE state IN ('held', 'to-read', 'read') AND needed_by >= ? AND needed_by < ?"
                        + " ORDER BY needed_by, id",
                this::read,
                from,
                until);
    }

    /** In the order of their first messages. */
    public List<Submission> ofTest(String test) {
        return tx.list(ALL + " WHERE test = ? ORDER BY id", this::read, test);
    }

    /** The tests that any submission is for, whatever became of it, save what was no submission at all. */
    public Set<String> heardFrom() {
        return Set.copyOf(tx.list(
                "SELECT DISTINCT test FROM submissions WHERE test IS NOT NULL AND state <> ?",
                r -> r.text("test"),
                SubmissionState.ASIDE.code()));
    }

    public List<Submission> all() {
        return tx.list(ALL + " ORDER BY id", this::read);
    }

    /**
     * Writes the submission and ties its messages to it; the one that it is a part of stays with its own submission.
     *
     * @return false where someone else changed it since it was read (its version is not one above the stored one)
     */
    public boolean save(Submission s) {
        boolean saved = s.version() == 1 ? insert(s) : change(s);
        if (saved) {
            tx.update("UPDATE messages SET submission = NULL WHERE submission = ?", s.id().value());
            Optional<MessageId> shared = tx.personLinks().part(s.id()).map(PersonLinks.Part::message);
            s.messages().stream()
                    .filter(m -> !shared.equals(Optional.of(m)))
                    .forEach(m -> tx.messages().assign(m, Optional.of(s.id())));
        }
        return saved;
    }

    /** Takes away a submission whose messages all turned out to belong elsewhere; its assessments stay. */
    public void dissolve(SubmissionId id) {
        tx.update("UPDATE messages SET submission = NULL WHERE submission = ?", id.value());
        tx.update("DELETE FROM submissions WHERE id = ?", id.value());
    }

    private boolean insert(Submission s) {
        return tx.update(
                        "INSERT INTO submissions (id, state, test, urgent, arrived, due, savable, needed_by, assessment, version)"
                                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING",
                        s.id().value(),
                        s.state().code(),
                        s.test(),
                        s.urgent(),
                        s.arrived(),
                        s.due(),
                        s.savable(),
                        s.neededBy(),
                        s.assessment(),
                        s.version())
                == 1;
    }

    private boolean change(Submission s) {
        return tx.update(
                        "UPDATE submissions SET state = ?, test = ?, urgent = ?, arrived = ?, due = ?, savable = ?,"
                                + " needed_by = ?, assessment = ?, version = ? WHERE id = ? AND version = ?",
                        s.state().code(),
                        s.test(),
                        s.urgent(),
                        s.arrived(),
                        s.due(),
                        s.savable(),
                        s.neededBy(),
                        s.assessment(),
                        s.version(),
                        s.id().value(),
                        s.version() - 1)
                == 1;
    }

    private Submission read(Row r) throws SQLException {
        return read(
                r,
                tx.list(
                        "SELECT id FROM messages WHERE submission = ? UNION ALL"
                                + " SELECT message AS id FROM parts WHERE submission = ? AND ended IS NULL ORDER BY id",
                        m -> new MessageId(m.number("id")),
                        r.number("id"),
                        r.number("id")));
    }

    private static Submission read(Row r, List<MessageId> messages) throws SQLException {
        return new Submission(
                new SubmissionId(r.number("id")),
                SubmissionState.ofCode(r.text("state")),
                messages,
                r.maybeText("test"),
                r.flag("urgent"),
                r.instant("arrived"),
                r.instant("due"),
                r.maybeInstant("savable"),
                r.maybeInstant("needed_by"),
                r.small("assessment"),
                r.small("version"));
    }
}
