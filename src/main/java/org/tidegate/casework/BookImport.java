package org.tidegate.casework;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidegate.booking.AppointmentBook;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.UserId;
import org.tidegate.work.WorkItem;

/** Makes a book the valid one; what is open is assessed again, nothing is overwritten. */
public final class BookImport {

    private final Store store;
    private final Clock clock;

    BookImport(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** @return how many tests are new, changed or gone */
    public int replace(AppointmentBook book, UserId who) {
        return store.write(tx -> {
            Set<String> changed = tx.tests().replace(book, clock.instant());
            if (!changed.isEmpty()) {
                tx.record("book-imported", who, List.of(), Map.of("changed", Integer.toString(changed.size())));
                tx.submissions().all().stream().filter(s -> open(s.state())).forEach(s -> assessAgain(tx, s));
            }
            return changed.size();
        });
    }

    private static boolean open(SubmissionState state) {
        return state.takesMore() || state == SubmissionState.TO_READ;
    }

    private static void assessAgain(Tx tx, Submission s) {
        s.messages().forEach(m -> tx.work().add(WorkItem.Kind.ASSESS, m.value(), s.due()));
    }
}
