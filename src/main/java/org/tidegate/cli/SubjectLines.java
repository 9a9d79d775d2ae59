package org.tidegate.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.BiFunction;
import org.tidegate.examination.subject.StatedText;
import org.tidegate.message.Mailbox;
import org.tidegate.message.Mailboxes;
import picocli.CommandLine;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** JSON Lines of subject lines on standard input, one answer a line on standard output; a bad line is named and the rest goes on. */
final class SubjectLines {

    private static final JsonMapper JSON = Json.mapper();

    private SubjectLines() {}

    static int answer(CommandLine command, BiFunction<String, StatedText, Object> answer) {
        PrintWriter out = command.getOut();
        int bad = 0;
        int number = 0;
        try (BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                number++;
                if (line.isBlank()) {
                    continue;
                }
                try {
                    JsonNode node = JSON.readTree(line);
                    out.println(JSON.writeValueAsString(
                            answer.apply(text(node, "id").orElse(""), stated(node))));
                } catch (JacksonException | DateTimeParseException e) {
                    bad++;
                    command.getErr()
                            .println("tidegate: line " + number + " is no question of the right shape (see --help): "
                                    + String.valueOf(e.getMessage())
                                            .lines()
                                            .findFirst()
                                            .orElse(""));
                }
            }
        } catch (IOException e) {
            throw new Refusal("standard input cannot be read: " + e.getMessage(), e);
        }
        return bad == 0 ? 0 : 2;
    }

    private static StatedText stated(JsonNode node) {
        Optional<Mailbox> from =
                text(node, "from").flatMap(f -> Mailboxes.parse(f).stream().findFirst());
        String received = text(node, "received").orElse("");
        return new StatedText(
                text(node, "subject"),
                text(node, "body").orElse(""),
                from.flatMap(Mailbox::displayName),
                from.map(Mailbox::address),
                OffsetDateTime.parse(received).toInstant());
    }

    private static Optional<String> text(JsonNode node, String key) {
        JsonNode value = node.get(key);
        return value == null || value.isNull() ? Optional.empty() : Optional.of(value.asString());
    }
}
