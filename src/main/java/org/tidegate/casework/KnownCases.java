package org.tidegate.casework;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.Assessment;
import org.tidegate.finding.Findings;
import org.tidegate.message.Mailbox;
import org.tidegate.store.StoredAssessment;
import org.tidegate.store.StoredJson;
import org.tidegate.store.Tx;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;

/**
 * The facts of the waiting submissions, opened and parsed once a version: unsealing thousands of messages for each look at the
 * queue would make it slow. May be used by several threads.
 */
final class KnownCases {

    private final CaseReader reader;
    private final Map<SubmissionId, CaseFacts> known = new ConcurrentHashMap<>();
    private volatile String book = "";

    KnownCases(CaseReader reader) {
        this.reader = reader;
    }

    /** The facts of all that wait; those of others are dropped. */
    Map<SubmissionId, CaseFacts> of(Tx tx, List<Submission> waiting) {
        String stamp = tx.tests().stamp();
        if (!stamp.equals(book)) {
            known.clear();
            book = stamp;
        }
        Set<SubmissionId> ids = waiting.stream().map(Submission::id).collect(Collectors.toSet());
        known.keySet().retainAll(ids);
        Map<SubmissionId, CaseFacts> all = new HashMap<>();
        waiting.forEach(s -> facts(tx, s).ifPresent(f -> all.put(s.id(), f)));
        return all;
    }

    /** Empty where it is forgotten. */
    private Optional<CaseFacts> facts(Tx tx, Submission s) {
        Optional<CaseFacts> before = Optional.ofNullable(known.get(s.id())).filter(f -> stands(f, s));
        if (before.isPresent()) {
            return before;
        }
        Optional<CaseFacts> read = tx.assessments().newest(s.id()).map(a -> read(tx, s, a));
        read.ifPresent(f -> known.put(s.id(), f));
        return read;
    }

    private static boolean stands(CaseFacts facts, Submission s) {
        return facts.version() == s.version();
    }

    private CaseFacts read(Tx tx, Submission s, StoredAssessment stored) {
        Assessment a = StoredJson.read(stored.content(), Assessment.class);
        Optional<TestRecord> test = reader.test(tx, a);
        Optional<Findings> first = reader.first(tx, s);
        return new CaseFacts(
                s.version(),
                CaseReader.who(test, first),
                addresses(test, first),
                test,
                OpenHolds.of(tx, s.id(), a),
                stored.made(),
                suggestion(tx, s, stored.made()));
    }

    private static List<String> addresses(Optional<TestRecord> test, Optional<Findings> first) {
        Set<String> all = new TreeSet<>();
        test.flatMap(t -> t.appointment().email()).ifPresent(a -> all.add(a.toLowerCase(Locale.ROOT)));
        first.ifPresent(f ->
                f.envelope().from().stream().map(Mailbox::address).forEach(a -> all.add(a.toLowerCase(Locale.ROOT))));
        return new ArrayList<>(all);
    }

    /** None where it was followed: then a person decides. */
    private static Optional<String> suggestion(Tx tx, Submission s, Instant assessed) {
        return tx.replies()
                .suggested(s.id(), s.assessment())
                .filter(r -> !Answered.since(assessed, tx.outbox().of(s.id())))
                .map(r -> r.notAfter().isPresent() ? "ask" : "explain");
    }
}
