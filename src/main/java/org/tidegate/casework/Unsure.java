package org.tidegate.casework;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tidegate.booking.TestRecord;
import org.tidegate.message.Mailbox;
import org.tidegate.store.Tx;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/** Open submissions of which it is not sure for which test they are, by the tests and addresses that they may be for. */
final class Unsure {

    private static final Set<SubmissionState> OPEN = EnumSet.of(SubmissionState.HELD, SubmissionState.WAITING);

    private final Map<String, List<SubmissionId>> byClue = new HashMap<>();

    private Unsure() {}

    static Unsure of(Tx tx, CaseReader reader) {
        Unsure unsure = new Unsure();
        for (Submission s : tx.submissions().inStates(OPEN)) {
            if (s.test().isEmpty()) {
                unsure.clues(tx, reader, s).forEach(clue -> unsure.add(clue, s.id()));
            }
        }
        return unsure;
    }

    private Set<String> clues(Tx tx, CaseReader reader, Submission s) {
        Set<String> clues = new TreeSet<>();
        reader.assessment(tx, s)
                .ifPresent(a ->
                        a.match().candidates().forEach(c -> clues.add(c.test().toString())));
        reader.findings(tx, s).stream()
                .flatMap(f -> f.envelope().from().stream())
                .map(Mailbox::address)
                .forEach(address -> clues.add(address.toLowerCase(Locale.ROOT)));
        return clues;
    }

    private void add(String clue, SubmissionId id) {
        byClue.computeIfAbsent(clue, k -> new ArrayList<>()).add(id);
    }

    List<SubmissionId> about(TestRecord test) {
        Set<SubmissionId> all = new TreeSet<>(byClue.getOrDefault(test.key().toString(), List.of()));
        test.appointment()
                .email()
                .map(a -> byClue.getOrDefault(a.toLowerCase(Locale.ROOT), List.of()))
                .ifPresent(all::addAll);
        return List.copyOf(all);
    }
}
