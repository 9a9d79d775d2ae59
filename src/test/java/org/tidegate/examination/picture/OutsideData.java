package org.tidegate.examination.picture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.tidegate.Needs;

/** Material from outside the project; a test that needs it is skipped, saying so, where it is not there. */
public final class OutsideData {

    private OutsideData() {}

    public static Path path(String relative) {
        Path path = Path.of(System.getProperty("tidegate.data", "../shared/data"), relative);
        Needs.outside(path);
        return path;
    }

    public static byte[] bytes(Path path) {
        try {
            return Files.readAllBytes(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Rows of a table whose first line names the columns. */
    public static List<CSVRecord> rows(Path csv, char delimiter) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(csv, StandardCharsets.UTF_8, format)) {
            return parser.getRecords();
        }
    }
}
