package org.tidegate.booking;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The cells of one row on their way to a test; what cannot be read is reported with the row's line. */
final class Row {

    private final long line;
    private final Map<String, String> cells;
    private final List<BookFault> faults;

    Row(long line, Map<String, String> cells, List<BookFault> faults) {
        this.line = line;
        this.cells = cells;
        this.faults = faults;
    }

    long line() {
        return line;
    }

    Optional<String> text(String column) {
        return Optional.ofNullable(cells.get(column)).map(String::strip).filter(s -> !s.isEmpty());
    }

    /** The text, or an empty string after a fault. */
    String required(String column) {
        return text(column).orElseGet(() -> {
            fault(column, "is empty", "every test needs it");
            return "";
        });
    }

    Optional<OffsetDateTime> time(String column) {
        return read(column, OffsetDateTime::parse, "write RFC 3339 with an offset, such as 2026-05-04T07:00:00+01:00");
    }

    /** The time; empty after a fault. */
    Optional<OffsetDateTime> requiredTime(String column) {
        return required(column).isEmpty() ? Optional.empty() : time(column);
    }

    Optional<LocalDate> date(String column) {
        return read(column, LocalDate::parse, "write year-month-day, such as 1991-10-31");
    }

    Optional<Integer> number(String column) {
        return read(column, Integer::valueOf, "write a whole number");
    }

    <T> Optional<T> read(String column, Function<String, T> parse, String hint) {
        return text(column).flatMap(s -> {
            try {
                return Optional.of(parse.apply(s));
            } catch (DateTimeException | IllegalArgumentException e) {
                fault(column, "'" + s + "' cannot be read", hint);
                return Optional.empty();
            }
        });
    }

    void fault(String column, String what, String hint) {
        faults.add(new BookFault(line, column, what, hint));
    }
}
