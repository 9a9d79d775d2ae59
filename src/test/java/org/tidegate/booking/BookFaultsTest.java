package org.tidegate.booking;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a book is told by line, all at once. */
class BookFaultsTest {

    private static final String[] HEADER =
            "ref,given_name,family_name,date_of_birth,email,clinic,slot_start,slot_end,kit,lot,attempt,timer_start,observed"
                    .split(",");
    private static final String[] ROW =
            "SK-1,Una,Tarnwick,1991-10-31,una@tarn.example,QUAY,2026-05-04T07:00:00+01:00,2026-05-04T07:15:00+01:00,SKERRY-20,SK1,1,2026-05-04T07:03:00+01:00,yes"
                    .split(",");

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(nullValues = "-", textBlock = """
            ref,           '',                        line 2: ref: is empty (every test needs it)
            slot_start,    2026-05-04 07:00,          line 2: slot_start: '2026-05-04 07:00' cannot be read
            slot_start,    2026-05-04T07:00:00,       line 2: slot_start: '2026-05-04T07:00:00' cannot be read
            slot_end,      2026-05-04T06:00:00+01:00, line 2: slot_end: the slot ends before it starts
            slot_end,      '',                        line 2: slot_end: is empty
            date_of_birth, 31/10/1991,                line 2: date_of_birth: '31/10/1991' cannot be read
            attempt,       0,                         line 2: attempt: 0 is out of range
            attempt,       two,                       line 2: attempt: 'two' cannot be read
            timer_start,   7:03,                      line 2: timer_start: '7:03' cannot be read
            observed,      perhaps,                   line 2: observed: 'perhaps' cannot be read
            kit,           '',                        line 2: kit: is empty
            clinic,        '',                        line 2: clinic: is empty
            date_of_birth, '',                        -
            email,         '',                        -
            lot,           '',                        -
            timer_start,   '',                        -
            observed,      '',                        -
            observed,      NO,                        -
            given_name,    '',                        -
            """)
    void oneCell(String column, String value, String expected) {
        String[] row = ROW.clone();
        row[Arrays.asList(HEADER).indexOf(column)] = value;
        List<String> faults = faults(String.join(",", HEADER) + "\n" + String.join(",", row) + "\n");
        if (expected == null) {
            assertThat(faults).isEmpty();
        } else {
            assertThat(faults).singleElement().asString().startsWith(expected);
        }
    }

    @Test
    void allAtOnceWithLinesThatCountQuotedNewlines() {
        String rows = String.join(",", HEADER) + ",note\n"
                + String.join(",", ROW) + ",\"one\ntwo\"\n"
                + String.join(",", ROW) + ",twice\n"
                + String.join(",", ROW).replace("SK-1", "SK-2").replace("QUAY", "") + ",\n"
                + String.join(",", ROW).replace("SK-1", "SK-3") + ",a,b\n";
        assertThat(faults(rows))
                .containsExactly(
                        "line 4: ref: SK-1 is there already on line 3 (a second kit is attempt 2)",
                        "line 5: clinic: is empty (every test needs it)",
                        "line 6: the row has more cells than the header (quote cells that hold a comma)");
    }

    @Test
    void namesEveryMissingColumn() {
        assertThat(faults("ref,given_name,family_name,email,clinic,slot_start,slot_end,kit\n"))
                .containsExactly(
                        "line 1: date_of_birth: the column is missing (the header needs date_of_birth)",
                        "line 1: lot: the column is missing (the header needs lot)");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            [{"ref": 1];                      this is not JSON
            {"tests": []};                    this is no JSON array
            [7];                              expected an object
            [{"ref": {"a": 1}}];              expected a text or a number
            BEGIN:VCALENDAR;                  this is not iCalendar
            "ref;                             this is not CSV
            """)
    void saysWhatAFileIsNot(String text, String expected) {
        assertThat(faults(text)).as(text).isNotEmpty().first().asString().contains(expected);
    }

    @Test
    void filesThatCannotBeRead(@TempDir Path folder) {
        assertThat(BookReader.read(folder)).isInstanceOf(BookResult.Faulty.class);
        assertThat(BookReader.read(folder.resolve("absent.csv"))).isInstanceOf(BookResult.Faulty.class);
        assertThat(faults("")).containsExactly("the file is empty (it begins with a line of column names)");
        assertThat(BookReader.read(new byte[] {(byte) 0xff, 0, 1})).isInstanceOf(BookResult.Faulty.class);
    }

    private static List<String> faults(String text) {
        return BookReader.read(text.getBytes(StandardCharsets.UTF_8)) instanceof BookResult.Faulty f
                ? f.faults().stream().map(BookFault::toString).toList()
                : List.of();
    }
}
