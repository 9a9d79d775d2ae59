package org.tidegate.examination.linkage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An invented book and what people might write: near-misses of every kind. */
class LinkerTest {

    private static final TestIndex INDEX = Books.indexOfResource("/linkage/book.csv");

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void linksAsACarefulClerkWould(Case c) {
        LinkageResult got = Books.linker().link(c.statement(), INDEX);
        assertThat(got.outcome().name().toLowerCase(Locale.ROOT)
                        + got.test().map(t -> " " + t).orElse(""))
                .as(c + "\n" + Explanations.of(got))
                .isEqualTo(c.want());
    }

    private static Stream<Case> cases() throws IOException {
        try (Reader in = new InputStreamReader(
                        Objects.requireNonNull(LinkerTest.class.getResourceAsStream("/linkage/cases.csv")),
                        StandardCharsets.UTF_8);
                CSVParser rows = CSVFormat.DEFAULT
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(in)) {
            return rows.getRecords().stream().map(Case::new);
        }
    }

    private record Case(CSVRecord row) {

        Statement statement() {
            return new Statement(
                    List.of(Readings.of(get("name"), get("time").map(LocalDateTime::parse), get("clinic"))),
                    get("display"),
                    get("address"),
                    Instant.parse(row.get("arrived")));
        }

        String want() {
            return row.get("outcome") + get("ref").map(r -> " " + r).orElse("");
        }

        private Optional<String> get(String column) {
            return Optional.of(row.get(column)).filter(v -> !v.isEmpty());
        }

        @Override
        public String toString() {
            return row.getRecordNumber() + " " + row.get("kind") + ": " + row.get("name");
        }
    }
}
