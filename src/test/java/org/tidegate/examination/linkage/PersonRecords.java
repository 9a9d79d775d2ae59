package org.tidegate.examination.linkage;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Records of persons from the open labelled sets.
 *
 * @param truth records with the same truth are of one person
 * @param values one value a field, lower case; empty where the record leaves it out
 */
record PersonRecords(List<String> fields, List<String> truth, List<List<String>> values) {

    /** FEBRL: the truth is the number in rec_id; the social-security column is left out. */
    static PersonRecords febrl(Path... files) throws IOException {
        return read(
                List.of(
                        "given_name",
                        "surname",
                        "street_number",
                        "address_1",
                        "address_2",
                        "suburb",
                        "postcode",
                        "state",
                        "date_of_birth"),
                row -> row.get("rec_id").split("-")[1],
                files);
    }

    /** The 1,000-row set: the truth is the cluster. */
    static PersonRecords fake(Path file) throws IOException {
        return read(List.of("first_name", "surname", "dob", "city", "email"), row -> row.get("cluster"), file);
    }

    private static PersonRecords read(List<String> fields, Function<CSVRecord, String> truth, Path... files)
            throws IOException {
        List<String> truths = new ArrayList<>();
        List<List<String>> values = new ArrayList<>();
        for (Path file : files) {
            try (Reader in = Files.newBufferedReader(file);
                    CSVParser rows = CSVFormat.DEFAULT
                            .builder()
                            .setHeader()
                            .setSkipHeaderRecord(true)
                            .setIgnoreSurroundingSpaces(true)
                            .get()
                            .parse(in)) {
                for (CSVRecord row : rows) {
                    truths.add(truth.apply(row));
                    values.add(fields.stream()
                            .map(f -> row.get(f).strip().toLowerCase(Locale.ROOT))
                            .toList());
                }
            }
        }
        return new PersonRecords(fields, truths, values);
    }

    int size() {
        return values.size();
    }

    String value(int record, int field) {
        return values.get(record).get(field);
    }

    boolean samePerson(int a, int b) {
        return truth.get(a).equals(truth.get(b));
    }

    long truePairs() {
        Map<String, Long> sizes = truth.stream().collect(Collectors.groupingBy(t -> t, Collectors.counting()));
        return sizes.values().stream().mapToLong(n -> n * (n - 1) / 2).sum();
    }
}
