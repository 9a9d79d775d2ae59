package org.tidegate.booking;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.Needs;

class BookReaderTest {

    private static final String HEADER =
            "ref,given_name,family_name,date_of_birth,email,clinic,slot_start,slot_end,kit,lot";
    private static final String ROW =
            "SK-1,Una,Tarnwick,1991-10-31,una@tarn.example,QUAY,2026-05-04T07:00:00+01:00,2026-05-04T07:15:00+01:00,SKERRY-20,SK1";

    /** Books made outside the project; number of rows counted with another CSV reader. */
    @ParameterizedTest
    @CsvSource({
        "messages-visible/appointments.csv",
        "subject-lines/appointments-A.csv",
        "subject-lines/appointments-B.csv"
    })
    void readsBooksMadeElsewhere(String name) throws Exception {
        Path file =
                Path.of(System.getProperty("tidegate.data", "../shared/data")).resolve(name);
        Needs.outside(file);
        BookResult result = BookReader.read(file);
        assertThat(result).isInstanceOf(BookResult.Read.class);
        long lines = Files.readAllLines(file).size() - 1L;
        assertThat(((BookResult.Read) result).book().tests()).hasSize((int) lines);
    }

    @Test
    void takesByteOrderMarkAndQuotedNewlines() {
        String text = "\uFEFF" + HEADER + ",note\r\n" + ROW + ",\"two\r\nlines, \"\"quoted\"\"\"\r\n";
        TestRecord test = read(text).tests().get(0);
        assertThat(test.appointment().note()).contains("two\r\nlines, \"quoted\"");
        assertThat(test.attempt()).isEqualTo(1);
        assertThat(test.observed()).isEqualTo(TestRecord.Observed.UNSTATED);
        assertThat(test.timerStart()).isEmpty();
    }

    private static AppointmentBook read(String text) {
        BookResult result = BookReader.read(text.getBytes(StandardCharsets.UTF_8));
        assertThat(result).isInstanceOf(BookResult.Read.class);
        return ((BookResult.Read) result).book();
    }
}
