package org.tidegate.booking;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tidegate.booking.TestRecord.Observed;

/** Turns rows of any format into a book, and tells what is wrong with them. */
final class BookBuilder {

    /** More rows than this are no clinic's book. */
    static final int MAX_ROWS = 200_000;

    private static final int MAX_FAULTS = 200;
    private static final int MAX_ATTEMPT = 9;

    private final List<TestRecord> tests = new ArrayList<>();
    private final List<BookFault> faults = new ArrayList<>();
    private final List<BookFault> warnings = new ArrayList<>();
    private final Map<TestKey, Long> lines = new HashMap<>();

    /** Adds a row; false where reading on is of no use. */
    boolean add(long line, Map<String, String> cells) {
        if (tests.size() >= MAX_ROWS) {
            faults.add(
                    new BookFault(line, "", "the book has more than " + MAX_ROWS + " rows", "import a shorter span"));
            return false;
        }
        int before = faults.size();
        Row row = new Row(line, cells, faults);
        Optional<TestRecord> test = test(row);
        test.ifPresent(t -> once(t, row));
        if (faults.size() == before) {
            test.ifPresent(tests::add);
        }
        return faults.size() < MAX_FAULTS;
    }

    void fault(long line, String column, String what, String hint) {
        faults.add(new BookFault(line, column, what, hint));
    }

    void warn(long line, String column, String what, String hint) {
        warnings.add(new BookFault(line, column, what, hint));
    }

    BookResult result() {
        if (faults.isEmpty() && tests.isEmpty()) {
            warn(0, "", "the book holds no tests", "");
        }
        return faults.isEmpty()
                ? new BookResult.Read(new AppointmentBook(tests), warnings)
                : new BookResult.Faulty(faults);
    }

    private Optional<TestRecord> test(Row row) {
        Optional<Appointment> appointment = appointment(row);
        int attempt = row.number("attempt").orElse(1);
        if (attempt < 1 || attempt > MAX_ATTEMPT) {
            row.fault("attempt", attempt + " is out of range", "1 to " + MAX_ATTEMPT);
        }
        String kit = row.required("kit");
        var lotExpires = row.date("lot_expires");
        var timerStart = row.time("timer_start");
        Observed observed = row.read("observed", BookBuilder::observed, "write yes or no, or leave it empty")
                .orElse(Observed.UNSTATED);
        return appointment.map(a ->
                new TestRecord(a, attempt, kit, row.text("lot"), lotExpires, timerStart, observed, row.text("mark")));
    }

    private static Optional<Appointment> appointment(Row row) {
        String ref = row.required("ref");
        String given = row.text("given_name").orElse("");
        String family = row.text("family_name").orElse("");
        if (given.isEmpty() && family.isEmpty()) {
            row.fault("given_name", "given_name and family_name are both empty", "one of them must be there");
        }
        String clinic = row.required("clinic");
        Optional<OffsetDateTime> start = row.requiredTime("slot_start");
        Optional<OffsetDateTime> end = row.requiredTime("slot_end");
        if (start.isEmpty() || end.isEmpty()) {
            return Optional.empty();
        }
        if (!start.get().isBefore(end.get())) {
            row.fault("slot_end", "the slot ends before it starts", "");
        }
        return Optional.of(new Appointment(
                ref,
                given,
                family,
                row.date("date_of_birth"),
                row.text("email"),
                clinic,
                start.get(),
                end.get(),
                row.text("language"),
                row.text("phone"),
                row.time("needed_by"),
                row.text("guardian"),
                row.text("disclose_to"),
                row.text("note")));
    }

    private static Observed observed(String s) {
        return switch (s.toLowerCase(Locale.ROOT)) {
            case "yes" -> Observed.YES;
            case "no" -> Observed.NO;
            default -> throw new IllegalArgumentException(s);
        };
    }

    private void once(TestRecord test, Row row) {
        Long earlier = lines.putIfAbsent(test.key(), row.line());
        if (earlier != null) {
            row.fault("ref", test.key() + " is there already on line " + earlier, "a second kit is attempt 2");
        }
    }
}
