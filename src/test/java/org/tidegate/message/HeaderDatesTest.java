package org.tidegate.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeaderDatesTest {

    /** Times of real Received lines, source in the file. */
    @Test
    void readsTheTimesOfRealReceivedLines() throws IOException {
        SoftAssertions softly = new SoftAssertions();
        try (Reader reader = Files.newBufferedReader(Path.of("shared/check-values/received-times.csv"))) {
            for (CSVRecord row : CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)) {
                softly.assertThat(HeaderDates.parse(row.get("date")).map(HeaderDate::instant))
                        .as(row.get("date"))
                        .contains(Instant.ofEpochSecond(Long.parseLong(row.get("epoch_utc"))));
            }
        }
        softly.assertAll();
    }

    /** RFC 5322 §4.3: years, obsolete and military zones; the rest is common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Mon, 4 May 26 08:23:12 Z         | 2026-05-04T08:23:12Z
            4 May 126 08:23 UT               | 2026-05-04T08:23:00Z
            Mon, 4 May 2026 08:23:60 +0000   | 2026-05-04T08:24:00Z
            Mon, 4 May 2026 08:23:12 GMT+0100 | 2026-05-04T07:23:12Z
            Mon, 4-May-2026 08:23:12 +01:00  | 2026-05-04T07:23:12Z
            2026-05-04T08:23:12.5+01:00      | 2026-05-04T07:23:12Z
            Mon, 4 May 2026 08:23:12 K       | 2026-05-04T08:23:12Z
            """)
    void readsObsoleteForms(String text, Instant meant) {
        assertThat(HeaderDates.parse(text).map(HeaderDate::instant)).as(text).contains(meant);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "yesterday", "32 May 2026 08:00 +0000", "4 Foo 2026 08:00 +0000", "4 May 2026 25:00 +0000"})
    void leavesOutWhatIsNoDate(String text) {
        assertThat(HeaderDates.parse(text)).as(text).isEmpty();
    }
}
