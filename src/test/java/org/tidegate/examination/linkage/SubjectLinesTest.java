package org.tidegate.examination.linkage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.Needs;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The open subject lines with their truth (../shared/data/subject-lines): given what a careful clerk reads, does the linker find
 * what he finds? The reader is left out on purpose; {@code match} tests both together.
 */
class SubjectLinesTest {

    private static final Path LINES =
            Path.of(System.getProperty("tidegate.data", "../shared/data")).resolve("subject-lines");

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void findsWhatACarefulClerkFinds(String book) throws IOException {
        Path truth = LINES.resolve("visible-" + book + ".jsonl");
        Needs.outside(truth);
        TestIndex index = Books.index(LINES.resolve("appointments-" + book + ".csv"));
        List<String> wrong = new ArrayList<>();
        for (String line : Files.readAllLines(truth)) {
            JsonNode want = JsonMapper.shared().readTree(line);
            LinkageResult got = Books.linker().link(statement(want), index);
            JsonNode expect = want.get("expect");
            String outcome = got.outcome().name().toLowerCase(Locale.ROOT);
            String ref = got.test().map(Object::toString).orElse("null");
            if (!outcome.equals(expect.get("outcome").asString())
                    || !ref.equals(expect.get("ref").asString("null"))) {
                wrong.add(want + " → " + outcome + " " + ref + "\n" + Explanations.of(got));
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static Statement statement(JsonNode want) {
        JsonNode expect = want.get("expect");
        String from = want.get("from").asString();
        int angle = from.indexOf('<');
        return new Statement(
                List.of(Readings.of(
                        text(expect, "name"),
                        text(expect, "test_time").map(LocalDateTime::parse),
                        text(expect, "clinic"))),
                Optional.of(from.substring(0, angle).strip()),
                Optional.of(from.substring(angle + 1, from.length() - 1)),
                Instant.parse(want.get("received").asString()));
    }

    private static Optional<String> text(JsonNode node, String field) {
        return Optional.ofNullable(node.get(field)).filter(n -> !n.isNull()).map(JsonNode::asString);
    }
}
