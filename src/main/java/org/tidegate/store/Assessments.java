package org.tidegate.store;

import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tidegate.store.CaseKeys.Scope;
import org.tidegate.work.MessageId;
import org.tidegate.work.SubmissionId;

/** Assessments, only ever appended. */
public final class Assessments {

    private static final String ALL =
            "SELECT submission, number, made, rules, messages, outcome, codes, sealed FROM assessments";

    private final Tx tx;

    Assessments(Tx tx) {
        this.tx = tx;
    }

    public void append(StoredAssessment a) {
        tx.update(
                "INSERT INTO assessments (submission, number, made, rules, messages, outcome, codes, sealed)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                a.submission().value(),
                a.number(),
                a.made(),
                a.rules(),
                a.messages().stream().map(m -> Long.toString(m.value())).collect(Collectors.joining(",")),
                a.outcome(),
                String.join(",", a.codes()),
                tx.caseKeys().seal(Scope.CASE, a.submission().value(), place(a.number()), a.content()));
    }

    /** The newest of a submission, standing or dissolved; empty where it is forgotten. */
    public Optional<StoredAssessment> newest(SubmissionId id) {
        return tx.first(ALL + " WHERE submission = ? ORDER BY number DESC LIMIT 1", this::read, id.value())
                .flatMap(Function.identity());
    }

    /** Those that are not forgotten, in their order. */
    public List<StoredAssessment> of(SubmissionId id) {
        return tx.list(ALL + " WHERE submission = ? ORDER BY number", this::read, id.value()).stream()
                .flatMap(Optional::stream)
                .toList();
    }

    public Optional<StoredAssessment> find(SubmissionId id, int number) {
        return tx.first(ALL + " WHERE submission = ? AND number = ?", this::read, id.value(), number)
                .flatMap(Function.identity());
    }

    /** The number of the newest, forgotten or not; 0 where there is none. */
    public int lastNumber(SubmissionId id) {
        return tx.first(
                        "SELECT COALESCE(MAX(number), 0) AS last FROM assessments WHERE submission = ?",
                        r -> r.small("last"),
                        id.value())
                .orElse(0);
    }

    private static String place(int number) {
        return "assessment " + number;
    }

    private Optional<StoredAssessment> read(Row r) throws SQLException {
        long submission = r.number("submission");
        int number = r.small("number");
        Optional<byte[]> sealed = r.maybeBytes("sealed");
        if (sealed.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> content = tx.caseKeys().open(Scope.CASE, submission, place(number), sealed.get());
        return content.isEmpty() ? Optional.empty() : Optional.of(read(r, submission, number, content.get()));
    }

    private static StoredAssessment read(Row r, long submission, int number, String content) throws SQLException {
        return new StoredAssessment(
                new SubmissionId(submission),
                number,
                r.instant("made"),
                r.text("rules"),
                words(r.text("messages")).stream()
                        .map(m -> new MessageId(Long.parseLong(m)))
                        .toList(),
                r.text("outcome"),
                words(r.text("codes")),
                content);
    }

    private static List<String> words(String joined) {
        return Arrays.stream(joined.split(",")).filter(w -> !w.isEmpty()).toList();
    }
}
