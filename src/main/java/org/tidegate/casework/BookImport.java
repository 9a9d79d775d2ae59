package org.tidegate.casework;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidegate.booking.AppointmentBook;
import org.tidegate.store.Store;
import org.tidegate.work.UserId;

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
                Registering.assessOpenAgain(tx);
            }
            return changed.size();
        });
    }
}
