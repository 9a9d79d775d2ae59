package org.tidegate.examination.picture.mrz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.examination.picture.OutsideData;

class MrzTest {

    /** Columns of the outside table and what we call the same check. */
    private static final Map<String, String> CHECKS = Map.of(
            "docno", "document number",
            "birth", "date of birth",
            "expiry", "date of expiry",
            "personal", "personal number",
            "composite", "whole");

    /** ICAO Doc 9303-3 Appendix A, worked examples. */
    @ParameterizedTest
    @CsvSource({
        "520727, 3",
        "AB2134<<<, 5",
        "HA672242<658022549601086<<<<<<<<<<<<<<0, 8",
        "D231458907<<<<<<<<<<<<<<<34071279507122<<<<<<<<<<<, 2",
    })
    void computesCheckDigits(String data, int digit) {
        assertThat(CheckDigit.of(data)).isEqualTo(digit);
    }

    /** All check digits of fillers hold; print of another kind was read as this. */
    @Test
    void fillersAndOrdinaryPrintAreFullOfStrays() {
        Mrz fillers = Mrz.of(List.of("A<<<<<<<<<<<<<<<<<J<<<<<<<<<<<<<<<<<", "<".repeat(36)))
                .orElseThrow();
        assertThat(fillers.valid()).isTrue();
        assertThat(fillers.strays()).isGreaterThan(6);
        Mrz print = Mrz.of(List.of("V<<<<<<S<<<<<<<<<<<<<<<<<<S<<S<S<<S<", "S726V8TJ79ZZV55277<2<979279<STT<<<<<"))
                .orElseThrow();
        assertThat(print.strays()).isGreaterThan(6);
    }

    /** One misread filler behind a name is one stray (the specimen of ICAO Doc 9303-4). */
    @Test
    void countsWhatFollowsTheName() {
        String numbers = "L898902C36UTO7408122F1204159ZE184226B<<<<<10";
        Mrz specimen = Mrz.of(List.of("P<UTOERIKSSON<<ANNA<MARIA<<<<<<<<<<<<<<<<<<<", numbers))
                .orElseThrow();
        Mrz misread = Mrz.of(List.of("P<UTOERIKSSON<<ANNA<MARIA<<<<<<<<<<K<<<<<<<<", numbers))
                .orElseThrow();
        assertThat(specimen.strays()).isZero();
        assertThat(misread.strays()).isEqualTo(1);
    }

    /** ICAO Doc 9303-4, -5 and -6: specimens. */
    @Test
    void readsTheFieldsOfASpecimen() {
        Mrz mrz = Mrz.of(List.of(
                        "P<UTOERIKSSON<<ANNA<MARIA<<<<<<<<<<<<<<<<<<<", "L898902C36UTO7408122F1204159ZE184226B<<<<<10"))
                .orElseThrow();
        assertThat(mrz.format()).isEqualTo(MrzFormat.TD3);
        assertThat(mrz.valid()).isTrue();
        assertThat(List.of(mrz.surname(), mrz.givenNames(), mrz.birth(), mrz.documentNumber(), mrz.issuer()))
                .containsExactly("ERIKSSON", "ANNA MARIA", "740812", "L898902C3", "UTO");
    }

    /** 91 zones of specimens and test files, verdicts recomputed there (../shared/data/standards/mrz-text). */
    @Test
    void agreesWithTheOutsideVectors() throws IOException {
        List<String> differences = new ArrayList<>();
        int zones = 0;
        for (CSVRecord row : OutsideData.rows(OutsideData.path("standards/mrz-text/mrz-vectors.csv"), ',')) {
            List<String> lines = Stream.of("line1", "line2", "line3")
                    .map(row::get)
                    .filter(l -> !l.isEmpty())
                    .toList();
            Mrz mrz = Mrz.of(lines).orElseThrow();
            zones++;
            if (row.get("type").startsWith("FRA")) {
                // A national layout: the same size as TD2, told apart by its check digits alone.
                assertThat(mrz.valid()).as(row.toString()).isFalse();
                continue;
            }
            assertThat(mrz.format().name())
                    .as(row.toString())
                    .isEqualTo(row.get("type").replace('-', '_'));
            assertThat(mrz.valid() ? mrz.strays() : 0).as(row.toString()).isZero();
            compare(row, mrz, differences);
        }
        assertThat(differences).isEmpty();
        assertThat(zones).isEqualTo(91);
    }

    private static void compare(CSVRecord row, Mrz mrz, List<String> differences) {
        for (Mrz.Check check : mrz.checks()) {
            String column = CHECKS.entrySet().stream()
                    .filter(e -> e.getValue().equals(check.what()))
                    .findFirst()
                    .orElseThrow()
                    .getKey();
            if (!row.get(column).equals(check.holds() ? "ok" : "bad")) {
                differences.add(mrz.lines() + " " + column + " there " + row.get(column) + ", here " + check.holds());
            }
        }
    }
}
