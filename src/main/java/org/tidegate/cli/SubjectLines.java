package org.tidegate.cli;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.function.BiFunction;
import org.tidegate.examination.subject.StatedText;
import org.tidegate.message.Mailbox;
import org.tidegate.message.Mailboxes;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;

/** JSON Lines of subject lines on standard input, one answer a line on standard output; a bad line is named and the rest goes on. */
final class SubjectLines {

    private SubjectLines() {}

    static int answer(CommandLine command, BiFunction<String, StatedText, Object> answer) {
        return JsonLines.answer(command, node -> answer.apply(text(node, "id").orElse(""), stated(node)));
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
