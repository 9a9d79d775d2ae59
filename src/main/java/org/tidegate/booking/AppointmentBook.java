package org.tidegate.booking;

import java.util.List;
import java.util.Optional;

/**
 * All booked tests.
 *
 * @param tests in the order of the file
 */
public record AppointmentBook(List<TestRecord> tests) {

    public AppointmentBook {
        tests = List.copyOf(tests);
    }

    public Optional<TestRecord> find(TestKey key) {
        return tests.stream().filter(t -> t.key().equals(key)).findFirst();
    }
}
