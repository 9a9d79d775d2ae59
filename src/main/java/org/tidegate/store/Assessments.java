package org.tidegate.store;

import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tidegate.work.MessageId;
import org.tidegate.work.SubmissionId;

/** Assessments, only ever appended. */
public final class Assessments {

    private static final String ALL =
            "SELECT submission, number, made, rules, messages, outcome, codes, content FROM assessments";

    private final Tx tx;

    Assessments(Tx tx) {
        this.tx = tx;
    }

    public void append(StoredAssessment a) {
        tx.update(
                "INSERT INTO assessments (submission, number, made, rules, messages, outcome, codes, content)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                a.submission().value(),
                a.number(),
                a.made(),
                a.rules(),
                a.messages().stream().map(m -> Long.toString(m.value())).collect(Collectors.joining(",")),
                a.outcome(),
                String.join(",", a.codes()),
                a.content());
    }

    /** The newest of a submission, standing or dissolved. */
    public Optional<StoredAssessment> newest(SubmissionId id) {
        return tx.first(ALL + " WHERE submission = ? ORDER BY number DESC LIMIT 1", Assessments::read, id.value());
    }

    public List<StoredAssessment> of(SubmissionId id) {
        return tx.list(ALL + " WHERE submission = ? ORDER BY number", Assessments::read, id.value());
    }

    private static StoredAssessment read(Row r) throws SQLException {
        return new StoredAssessment(
                new SubmissionId(r.number("submission")),
                r.small("number"),
                r.instant("made"),
                r.text("rules"),
                words(r.text("messages")).stream()
                        .map(m -> new MessageId(Long.parseLong(m)))
                        .toList(),
                r.text("outcome"),
                words(r.text("codes")),
                r.text("content"));
    }

    private static List<String> words(String joined) {
        return Arrays.stream(joined.split(",")).filter(w -> !w.isEmpty()).toList();
    }
}
