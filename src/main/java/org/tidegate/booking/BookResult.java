package org.tidegate.booking;

import java.util.List;

/** What came of reading an appointment book: the whole book, or every fault at once. */
public sealed interface BookResult {

    /** @param warnings what was odd but did no harm, such as unknown columns */
    record Read(AppointmentBook book, List<BookFault> warnings) implements BookResult {
        public Read {
            warnings = List.copyOf(warnings);
        }
    }

    /** @param faults never empty, in the order of the file */
    record Faulty(List<BookFault> faults) implements BookResult {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
