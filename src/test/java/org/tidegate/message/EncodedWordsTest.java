package org.tidegate.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EncodedWordsTest {

    /** RFC 2047 §8, source in the file. */
    @Test
    void decodesTheExamplesOfTheStandard() throws IOException {
        SoftAssertions softly = new SoftAssertions();
        try (Reader reader = Files.newBufferedReader(Path.of("shared/check-values/rfc2047-section-8.csv"))) {
            for (CSVRecord row : CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)) {
                String folded = row.get("encoded").replace("\\r\\n", "");
                softly.assertThat(EncodedWords.decode(folded)).as(folded).isEqualTo(row.get("decoded"));
            }
        }
        softly.assertAll();
    }

    /** How careless programs write them; common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            =?utf-8?B?TWFyw60=?= Lunde                     | Marí Lunde
            =?utf-8?Q?Mar=C3?= =?utf-8?Q?=ADa?=            | María
            =?utf-8?Q?Test at 7.05?=                       | Test at 7.05
            =?utf-8?B?TWFyw60?=                            | Marí
            =?no-such-set?Q?Mar=C3=ADa?=                   | María
            =?UTF-8*es?Q?Mar=C3=ADa?=                      | María
            =?utf-8?X?abc?=                                | =?utf-8?X?abc?=
            a =?utf-8?Q??= b                               | a  b
            """)
    void decodesCarelessForms(String encoded, String decoded) {
        assertThat(EncodedWords.decode(encoded)).as(encoded).isEqualTo(decoded);
    }
}
