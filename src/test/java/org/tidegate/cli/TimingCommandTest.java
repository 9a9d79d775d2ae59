package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The {@code timing} command on the example of its own help. */
class TimingCommandTest {

    static final String QUESTION = "{\"id\":\"1\",\"zone\":\"Europe/London\",\"clues\":["
            + "{\"earlier\":\"epoch\",\"later\":\"test\",\"lo\":\"2026-05-04T07:02:00+01:00\",\"hi\":\"2026-05-04T07:04:00+01:00\","
            + "\"clock\":{\"kind\":\"clinic\"},\"place\":\"book timer_start\",\"tolerance\":\"PT5S\"},"
            + "{\"earlier\":\"epoch\",\"later\":\"photo[0]\",\"lo\":\"2026-05-04T07:28:00+01:00\",\"hi\":\"2026-05-04T07:28:00+01:00\","
            + "\"clock\":{\"kind\":\"phone\"},\"place\":\"DateTimeOriginal\",\"tolerance\":\"PT2M\"}],"
            + "\"windows\":[{\"check\":\"photo\",\"earlier\":\"test\",\"later\":\"photo[0]\",\"from\":\"PT20M\",\"until\":\"PT30M\"}]}";

    @Test
    void judgesTheWindowOnTheGivenClues() {
        Ran ran = run(QUESTION);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains(
                        "\"verdict\":\"inside\",\"level\":3", "\"margin\":\"PT4M\"", "at least 24 min after the test");
    }

    @Test
    void namesABadLineAndGoesOn() {
        Ran ran = run("{\"clues\":[]}\n" + QUESTION);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("line 1 is no question of the right shape");
        assertThat(ran.out()).contains("\"id\":\"1\"");
    }

    /** What is no clue or window is named, and nothing is judged on it. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            "lo":"2026-05-04T07:28:00+01:00"; "lo":"2026-05-04T07:29:00+01:00"; "lo" lies above "hi"
            "from":"PT20M";                   "from":"PT31M";                   "from" lies above "until"
            "tolerance":"PT5S";               "tolerance":"-PT5S";              "tolerance" is negative
            "until":"PT30M";                  "until":"PT9223372036854775807S"; beyond 146097 days
            "until":"PT30M";                  "until":"soon";                   cannot be parsed
            """)
    void refusesWhatIsNoQuestion(String from, String to, String complaint) {
        Ran ran = run(QUESTION.replace(from, to));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(complaint);
    }

    record Ran(int code, String out, String err) {}

    static Ran run(String input) {
        InputStream before = System.in;
        StringWriter out = new StringWriter();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        try {
            System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
            int code = Main.run(
                    new String[] {"timing"}, new PrintWriter(out), new PrintStream(err, true, StandardCharsets.UTF_8));
            return new Ran(code, out.toString(), err.toString(StandardCharsets.UTF_8));
        } finally {
            System.setIn(before);
        }
    }
}
