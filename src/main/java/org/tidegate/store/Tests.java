package org.tidegate.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidegate.booking.AppointmentBook;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;

/** The tests of the appointment book in all their versions. */
public final class Tests {

    private static final String NEWEST = " t WHERE gone IS NULL AND version ="
            + " (SELECT MAX(version) FROM tests n WHERE n.ref = t.ref AND n.attempt = t.attempt)";

    private final Tx tx;

    Tests(Tx tx) {
        this.tx = tx;
    }

    /** Makes the book the valid one. @return the tests that are new, changed or gone */
    public Set<String> replace(AppointmentBook book, Instant when) {
        Set<String> changed = new TreeSet<>();
        Set<String> named = new TreeSet<>();
        for (TestRecord test : book.tests()) {
            named.add(test.key().toString());
            if (put(test, when)) {
                changed.add(test.key().toString());
            }
        }
        for (TestKey key : keys()) {
            if (!named.contains(key.toString())) {
                tx.update(
                        "UPDATE tests SET gone = ? WHERE ref = ? AND attempt = ? AND gone IS NULL",
                        when,
                        key.ref(),
                        key.attempt());
                changed.add(key.toString());
            }
        }
        return changed;
    }

    /** Adds a version where the record differs from the newest. @return whether it did */
    public boolean put(TestRecord test, Instant when) {
        String record = StoredJson.write(test);
        if (current(test.key()).filter(record::equals).isPresent()) {
            return false;
        }
        tx.update(
                "INSERT INTO tests (ref, attempt, version, record, imported) SELECT ?, ?, COALESCE(MAX(version), 0) + 1, ?, ?"
                        + " FROM tests WHERE ref = ? AND attempt = ?",
                test.key().ref(),
                test.key().attempt(),
                record,
                when.toEpochMilli(),
                test.key().ref(),
                test.key().attempt());
        return true;
    }

    /** The book as it is valid, with the repeats that were recorded here, and the observer's records over all. */
    public AppointmentBook book() {
        Map<TestKey, Observation> observed = tx.observations().newest();
        List<TestRecord> tests = new ArrayList<>(tx.list(
                "SELECT record FROM tests" + NEWEST + " ORDER BY ref, attempt",
                r -> StoredJson.read(r.text("record"), TestRecord.class)));
        repeats(tests);
        tests.replaceAll(t ->
                Optional.ofNullable(observed.get(t.key())).map(o -> o.over(t)).orElse(t));
        return new AppointmentBook(tests);
    }

    /** A repeat that the book knows by itself is the book's. */
    private void repeats(List<TestRecord> tests) {
        List<Repeat> recorded = tx.repeats().all();
        if (recorded.isEmpty()) {
            return;
        }
        Map<TestKey, TestRecord> known = new HashMap<>();
        tests.forEach(t -> known.put(t.key(), t));
        for (Repeat repeat : recorded) {
            TestRecord before =
                    known.get(new TestKey(repeat.test().ref(), repeat.test().attempt() - 1));
            if (before != null && !known.containsKey(repeat.test())) {
                TestRecord test = repeat.after(before);
                known.put(repeat.test(), test);
                tests.add(test);
            }
        }
    }

    /** Changes whenever the book does. */
    public String stamp() {
        return tx.first(
                        "SELECT COUNT(*) AS versions, COUNT(gone) AS gone, (SELECT COUNT(*) FROM observations) AS observed,"
                                + " (SELECT COUNT(*) FROM repeats) AS repeated FROM tests",
                        r -> r.number("versions") + "/" + r.number("gone") + "/" + r.number("observed") + "/"
                                + r.number("repeated"))
                .orElseThrow();
    }

    private Optional<String> current(TestKey key) {
        return tx.first(
                "SELECT record FROM tests" + NEWEST + " AND t.ref = ? AND t.attempt = ?",
                r -> r.text("record"),
                key.ref(),
                key.attempt());
    }

    private List<TestKey> keys() {
        return tx.list("SELECT ref, attempt FROM tests" + NEWEST, r -> new TestKey(r.text("ref"), r.small("attempt")));
    }
}
