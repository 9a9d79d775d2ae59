package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesFolder;

/** The program's own measure is shown by a rule only, to who has read, and never against a line that a reader saw. */
class ProposalTest {

    private static final Instant NOW = Instant.parse("2026-05-04T09:02:00Z");
    private static final String MEASURED = "What the program measured";

    @TempDir
    Path data;

    @Test
    void isShownAfterTheReadersOwnReading() throws Exception {
        try (Morning morning = Morning.until(proposing(), data.resolve("on"), NOW, "01-")) {
            Visitor anna = Visitor.signedIn(morning, "anna");
            assertThat(anna.get("submissions/1").body()).doesNotContain(MEASURED);
            read(anna, "ABSENT");
            assertThat(anna.get("submissions/1").body())
                    .contains(
                            MEASURED,
                            "No line found at T above 3 %",
                            "Line at C, strength ",
                            "what a trained reader sees counts");
            assertThat(Visitor.signedIn(morning, "reader").get("submissions/1").body())
                    .as("somebody else who has not read yet")
                    .doesNotContain(MEASURED);
        }
    }

    @Test
    void doesNotArgueAPositiveDown() throws Exception {
        try (Morning morning = Morning.until(proposing(), data.resolve("on"), NOW, "01-")) {
            Visitor anna = Visitor.signedIn(morning, "anna");
            read(anna, "PRESENT");
            assertThat(anna.get("submissions/1").body())
                    .contains("Line at C, strength ")
                    .doesNotContain("No line found");
        }
    }

    @Test
    void isOffUnlessARuleTurnsItOn() throws Exception {
        try (Morning morning = Morning.until(data.resolve("off"), NOW, "01-")) {
            Visitor anna = Visitor.signedIn(morning, "anna");
            read(anna, "ABSENT");
            assertThat(anna.get("submissions/1").body()).doesNotContain(MEASURED);
        }
    }

    private Rules proposing() throws Exception {
        return RulesFolder.copyTo(data.resolve("rules"))
                .edit("pictures.yaml", "propose_reading: false", "propose_reading: true")
                .rules();
    }

    private static void read(Visitor reader, String test) throws Exception {
        Matcher version = Pattern.compile("name=\"version\" value=\"(\\d+)\"")
                .matcher(reader.get("submissions/1").body());
        assertThat(version.find()).isTrue();
        reader.post("submissions/1/reading", Map.of("version", version.group(1), "control", "PRESENT", "test", test));
    }
}
