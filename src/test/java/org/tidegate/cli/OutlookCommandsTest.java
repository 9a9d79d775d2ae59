package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** {@code not-heard-from} and {@code outlook} over a store that {@code take} made. */
class OutlookCommandsTest {

    private static final String MORNING = "2026-05-04T10:02";

    @TempDir
    static Path data;

    @BeforeAll
    static void take() {
        assertThat(Ran.command("appointments", "import", "sample-mailbox/appointments.csv", "--data", data)
                        .code())
                .isZero();
        assertThat(Ran.command("take", "sample-mailbox/32-missing-id-first.eml", "--data", data)
                        .code())
                .isZero();
    }

    @Test
    void tellsWhoseWindowIsOpenWithoutAName() {
        Ran ran = Ran.command("not-heard-from", "--data", data, "--at", MORNING);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("Mon 4 May 2026 10:02 BST", "There is time", "SS-T3V7", "does not diagnose")
                .doesNotContain("Vestergren", "SS-R8L3");
    }

    @Test
    void theCsvHasARowForEachTestThatIsTold() {
        List<String> rows = Ran.command("not-heard-from", "--data", data, "--at", MORNING, "--csv")
                .out()
                .lines()
                .toList();
        assertThat(rows.get(0)).startsWith("ref,attempt,clinic,step");
        assertThat(rows).anyMatch(r -> r.startsWith("SS-T3V7,1,") && r.contains("2026-05-04T"));
        String text =
                Ran.command("not-heard-from", "--data", data, "--at", MORNING).out();
        assertThat(text.lines().filter(l -> l.startsWith("  SS-"))).hasSize(rows.size() - 1);
    }

    @Test
    void reckonsWhenItIsClear() {
        String nobody = Ran.command("outlook", "--data", data, "--at", MORNING, "--people", 0)
                .out();
        assertThat(nobody).contains("with 0 people", "1 wait now", "It is not clear before");
        String one = Ran.command("outlook", "--data", data, "--at", MORNING).out();
        assertThat(one).contains("with 1 person", "Nothing waits any more at about");
    }

    @Test
    void theJsonIsTheSame() {
        JsonNode one = Json.tree(Ran.command("outlook", "--data", data, "--at", MORNING, "--json")
                .out());
        assertThat(one.get("waiting").asInt()).isEqualTo(1);
        assertThat(one.get("clear").asString()).startsWith("2026-05-04T");
    }

    @Test
    void saysWhatIsWrong() {
        assertThat(Ran.command("outlook", "--data", data, "--people", -1).err()).contains("nobody is the least");
        assertThat(Ran.command("not-heard-from", "--data", data, "--at", "noon").err())
                .contains("'noon' is no time");
    }
}
