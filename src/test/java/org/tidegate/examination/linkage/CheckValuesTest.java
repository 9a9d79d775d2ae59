package org.tidegate.examination.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidegate.rules.MatchingRules;
import org.tidegate.rules.MatchingRules.AgreementLevel;

/** Published figures of record linkage; each row of the tables in shared/check-values names its source. */
class CheckValuesTest {

    @ParameterizedTest
    @MethodSource("jaroWinkler")
    void jaroWinklerAsPublished(CSVRecord row) {
        assertThat(new JaroWinklerSimilarity().apply(row.get("a"), row.get("b")))
                .as(row.toString())
                .isCloseTo(Double.parseDouble(row.get("jaro_winkler")), within(0.0006));
    }

    @ParameterizedTest
    @MethodSource("weights")
    void weightsAsPublished(CSVRecord row) {
        double m = Double.parseDouble(row.get("m"));
        double u = Double.parseDouble(row.get("u"));
        Weights weights = new Weights(rules("clinic", new AgreementLevel("same", m, u)));
        assertThat(weights.of("clinic", "same", "").orElseThrow().weight())
                .as(row.toString())
                .isCloseTo(Double.parseDouble(row.get("weight")), within(0.005));
    }

    @ParameterizedTest
    @MethodSource("probabilities")
    void probabilitiesAsPublished(CSVRecord row) {
        assertThat(Linker.probability(Double.parseDouble(row.get("weight"))))
                .as(row.toString())
                .isCloseTo(Double.parseDouble(row.get("probability")), within(Double.parseDouble(row.get("within"))));
    }

    /** Restricted distance (optimal string alignment); the first two pairs are the textbook ones, the third shows the restriction. */
    @ParameterizedTest
    @CsvSource({"kitten,sitting,3", "ca,ac,1", "ca,abc,3", "aiofe,aoife,1", "same,same,0"})
    void distanceAsInTheTextbooks(String a, String b, int distance) {
        assertThat(Damerau.distance(a, b, 10)).isEqualTo(distance);
    }

    static List<CSVRecord> jaroWinkler() throws IOException {
        return rows("jaro-winkler.csv");
    }

    static List<CSVRecord> weights() throws IOException {
        List<CSVRecord> rows = rows("fellegi-sunter-abs-c1.csv");
        rows.addAll(rows("fellegi-sunter-weights.csv"));
        return rows;
    }

    static List<CSVRecord> probabilities() throws IOException {
        return rows("weight-to-probability.csv");
    }

    private static List<CSVRecord> rows(String file) throws IOException {
        try (Reader in = Files.newBufferedReader(Path.of("shared/check-values", file));
                CSVParser rows = CSVFormat.DEFAULT
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(in)) {
            return rows.getRecords();
        }
    }

    private static MatchingRules rules(String field, AgreementLevel level) {
        MatchingRules live = Books.rules().matching();
        return new MatchingRules(
                live.matchAt(),
                live.rivalFactor(),
                live.candidateAt(),
                live.noTestPrior(),
                live.openWithin(),
                List.of(new MatchingRules.Field(field, List.of(level))));
    }
}
