package org.tidegate.store;

import java.util.List;
import java.util.Optional;
import org.tidegate.store.CaseKeys.Scope;
import org.tidegate.work.Reading;
import org.tidegate.work.SubmissionId;

/** Readings, sealed, only ever appended. */
public final class Readings {

    private final Tx tx;

    Readings(Tx tx) {
        this.tx = tx;
    }

    public void append(Reading r) {
        tx.update(
                "INSERT INTO readings (submission, number, sealed, who, made) VALUES (?, ?, ?, ?, ?)",
                r.submission().value(),
                r.number(),
                tx.caseKeys().seal(Scope.RESULT, r.submission().value(), place(r.number()), StoredJson.write(r)),
                r.who().value(),
                r.when());
    }

    /** In their order; forgotten ones are left out. */
    public List<Reading> of(SubmissionId id) {
        return tx
                .list(
                        "SELECT number, sealed FROM readings WHERE submission = ? ORDER BY number",
                        r -> tx.caseKeys()
                                .open(Scope.RESULT, id.value(), place(r.small("number")), r.bytes("sealed"))
                                .map(json -> StoredJson.read(json, Reading.class)),
                        id.value())
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    private static String place(int number) {
        return "reading " + number;
    }
}
