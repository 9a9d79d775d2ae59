package org.tidegate.booking;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A book as CSV (RFC 4180): a header line, a row a test. */
final class CsvBook {

    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(true).get();

    private CsvBook() {}

    static BookResult read(Reader text) throws IOException {
        BookBuilder book = new BookBuilder();
        try (CSVParser parser =
                CSVParser.builder().setReader(text).setFormat(FORMAT).get()) {
            rows(parser, book);
        } catch (UncheckedIOException | IllegalStateException e) {
            book.fault(0, "", "this is not CSV: " + e.getMessage(), "check the quotes");
        }
        return book.result();
    }

    private static void rows(CSVParser parser, BookBuilder book) {
        var records = parser.iterator();
        if (!records.hasNext()) {
            book.fault(0, "", "the file is empty", "it begins with a line of column names");
            return;
        }
        List<String> header = header(records.next(), book);
        if (header.isEmpty()) {
            return;
        }
        while (records.hasNext()) {
            CSVRecord row = records.next();
            if (row.size() > header.size()) {
                book.fault(
                        parser.getCurrentLineNumber(),
                        "",
                        "the row has more cells than the header",
                        "quote cells that hold a comma");
            } else if (!book.add(parser.getCurrentLineNumber(), cells(header, row))) {
                return;
            }
        }
    }

    /** Column names in order; empty where the book cannot be read with them. */
    private static List<String> header(CSVRecord first, BookBuilder book) {
        List<String> names =
                first.stream().map(s -> s.strip().toLowerCase(Locale.ROOT)).toList();
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                book.fault(1, name, "the column is there twice", "keep one");
                return List.of();
            }
            if (!Columns.known(name)) {
                book.warn(1, name, "the column is unknown and was left out", "");
            }
        }
        Set<String> missing = Columns.missing(seen);
        missing.forEach(m -> book.fault(1, m, "the column is missing", "the header needs " + m));
        return missing.isEmpty() ? names : List.of();
    }

    private static Map<String, String> cells(List<String> header, CSVRecord row) {
        Map<String, String> cells = new TreeMap<>();
        for (int i = 0; i < row.size(); i++) {
            cells.put(header.get(i), row.get(i));
        }
        return cells;
    }
}
