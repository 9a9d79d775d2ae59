package org.tidegate.examination.subject;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.finding.SubjectReading;
import org.tidegate.rules.Rules;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The open subject lines with what a careful clerk reads (../shared/data/subject-lines), compared as their score.py does. */
class VisibleLinesTest {

    private static final Path LINES =
            Path.of(System.getProperty("tidegate.data", "../shared/data")).resolve("subject-lines");

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void readsWhatACarefulClerkReads(String book) throws IOException {
        Path truth = LINES.resolve("visible-" + book + ".jsonl");
        Assumptions.assumeTrue(Files.exists(truth), "skipped: no " + truth);
        SubjectReader reader = new SubjectReader(Rules.bundled());
        List<String> wrong = new ArrayList<>();
        for (String line : Files.readAllLines(truth)) {
            JsonNode want = JsonMapper.shared().readTree(line);
            JsonNode expect = want.get("expect");
            SubjectReading got = reader.read(stated(want)).get(0);
            boolean readable = expect.get("readable").asBoolean();
            boolean same = names(got.name().orElse(""))
                            .equals(names(expect.get("name").asString("")))
                    && got.testTime()
                            .map(Object::toString)
                            .orElse("")
                            .equals(expect.get("test_time").asString(""))
                    && got.clinic().orElse("").equals(expect.get("clinic").asString(""));
            if (got.readable() != readable || readable && !same) {
                wrong.add(want + " → " + got);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static StatedText stated(JsonNode want) {
        String from = want.get("from").asString();
        int angle = from.indexOf('<');
        return new StatedText(
                Optional.of(want.get("subject").asString()),
                "",
                Optional.of(from.substring(0, angle).strip()),
                Optional.of(from.substring(angle + 1, from.length() - 1)),
                Instant.parse(want.get("received").asString()));
    }

    /** Words without case, accents, order and punctuation. */
    private static List<String> names(String name) {
        return Arrays.stream(Fold.key(name).replaceAll("['.]", "").split("[^\\p{L}\\d]+"))
                .filter(w -> !w.isEmpty())
                .sorted()
                .toList();
    }
}
