package org.tidegate.examination;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.tidegate.examination.subject.StatedText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A subject line with what a careful clerk reads and decides. */
record CorpusLine(
        String id,
        StatedText text,
        Optional<String> name,
        Optional<String> testTime,
        boolean readable,
        Optional<String> ref,
        String outcome) {

    /** Lines of JSON as they stand in {@code ../shared/data/subject-lines}. */
    static List<CorpusLine> ofJson(Path file) throws IOException {
        return Files.readAllLines(file).stream().map(CorpusLine::ofJson).toList();
    }

    private static CorpusLine ofJson(String json) {
        JsonNode node = JsonMapper.shared().readTree(json);
        JsonNode expect = node.get("expect");
        return new CorpusLine(
                node.get("id").asString(),
                stated(
                        node.get("subject").asString(),
                        "",
                        node.get("from").asString(),
                        node.get("received").asString()),
                text(expect, "name"),
                text(expect, "test_time"),
                expect.get("readable").asBoolean(),
                text(expect, "ref"),
                expect.get("outcome").asString());
    }

    private static Optional<String> text(JsonNode node, String field) {
        return Optional.ofNullable(node.get(field)).filter(n -> !n.isNull()).map(JsonNode::asString);
    }

    /** Our own lines: {@code corpus/lines.csv}. */
    static List<CorpusLine> own() {
        return own("lines.csv");
    }

    /** A file of our own lines, each written before the reader saw any of it. */
    static List<CorpusLine> own(String file) {
        try (InputStream in = Objects.requireNonNull(CorpusLine.class.getResourceAsStream("corpus/" + file));
                InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            return CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get().parse(reader).stream()
                    .map(CorpusLine::ofRow)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static CorpusLine ofRow(CSVRecord row) {
        return new CorpusLine(
                row.get("id"),
                stated(row.get("subject"), row.get("body"), row.get("from"), row.get("received")),
                some(row.get("name")),
                some(row.get("test_time")),
                row.get("readable").equals("yes"),
                some(row.get("ref")),
                row.get("outcome"));
    }

    private static Optional<String> some(String cell) {
        return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
    }

    private static StatedText stated(String subject, String body, String from, String received) {
        int angle = from.indexOf('<');
        return new StatedText(
                Optional.of(subject),
                body,
                Optional.of(from.substring(0, angle).strip()),
                Optional.of(from.substring(angle + 1, from.length() - 1)),
                Instant.parse(received));
    }

    /** Every third line of our own is unseen while the reader is worked on. */
    boolean unseen() {
        return Integer.parseInt(id.substring(1)) % 3 == 0;
    }
}
