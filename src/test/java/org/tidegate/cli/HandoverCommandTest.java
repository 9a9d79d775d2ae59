package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command over a store that {@code take} made. */
class HandoverCommandTest {

    @TempDir
    static Path data;

    @BeforeAll
    static void take() {
        assertThat(Ran.command("appointments", "import", "sample-mailbox/appointments.csv", "--data", data)
                        .code())
                .isZero();
        assertThat(Ran.command("take", "sample-mailbox/24-worried.eml", "--data", data)
                        .code())
                .isZero();
    }

    @Test
    void tellsWhatIsOpenWithoutANameAndWithTheCautions() {
        Ran ran = Ran.command("handover", "--data", data, "--from", "2026-05-03T19:00");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains(
                        "Sun 3 May 2026 19:00 BST",
                        "Urgent words: call, do not only write: 1",
                        "SS-J3B7",
                        "does not diagnose")
                .doesNotContain("Kinlochan");
    }

    @Test
    void theCsvHasAHeader() {
        Ran ran = Ran.command("handover", "--data", data, "--from", "2026-05-03T19:00", "--csv");
        assertThat(ran.out().lines()).hasSize(2).first().asString().startsWith("what,submission,ref,clinic,codes");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            --from; yesterday;                 'yesterday' is no time; for example 2026-05-04T07:00
            --to;   2026-05-04T25:00;          '2026-05-04T25:00' is no time
            --from; 2126-05-04T07:00:00+01:00; nothing lies between them
            """)
    void saysWhatIsWrongWithATime(String option, String time, String words) {
        Ran ran = Ran.command("handover", "--data", data, option, time);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(words).doesNotContain("\tat ");
    }
}
