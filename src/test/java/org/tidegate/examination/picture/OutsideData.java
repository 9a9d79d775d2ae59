package org.tidegate.examination.picture;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Material from outside the project; a test that needs it is skipped, saying so, where it is not there. */
public final class OutsideData {

    private OutsideData() {}

    public static Path path(String relative) {
        Path path = Path.of(System.getProperty("tidegate.data", "../shared/data"), relative);
        assumeTrue(Files.exists(path), "skipped: there is no " + path);
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
