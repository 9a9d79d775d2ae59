package org.tidegate.cli;

import java.nio.file.Path;
import org.tidegate.booking.AppointmentBook;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;

/** Appointment books from files. */
final class Books {

    private Books() {}

    static AppointmentBook read(Path file) {
        BookResult result = BookReader.read(file);
        if (result instanceof BookResult.Faulty faulty) {
            StringBuilder words = new StringBuilder(
                    "the appointment book " + file + " has " + faulty.faults().size() + " fault(s); nothing was done:");
            faulty.faults()
                    .forEach(f ->
                            words.append(System.lineSeparator()).append("  ").append(f));
            throw new Refusal(words.toString());
        }
        return ((BookResult.Read) result).book();
    }
}
