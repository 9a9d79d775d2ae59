package org.tidegate.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeParseException;
import java.util.function.Function;
import picocli.CommandLine;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/** Questions as JSON Lines on standard input, one answer a line on standard output; a bad line is named and the rest goes on. */
final class JsonLines {

    private JsonLines() {}

    /** A question of the wrong shape. */
    static final class BadQuestion extends RuntimeException {

        private static final long serialVersionUID = 1L;

        BadQuestion(String what) {
            super(what);
        }
    }

    /** Exit code 0, or 2 where a line was bad. */
    static int answer(CommandLine command, Function<JsonNode, Object> answer) {
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
                    out.println(Json.text(answer.apply(Json.tree(line))));
                } catch (JacksonException | DateTimeParseException | BadQuestion e) {
                    bad++;
                    command.getErr()
                            .println("tidegate: line " + number + " is no question of the right shape (see --help): "
                                    + firstLine(e));
                }
            }
        } catch (IOException e) {
            throw new Refusal("standard input cannot be read: " + e.getMessage(), e);
        }
        return bad == 0 ? 0 : 2;
    }

    private static String firstLine(Exception e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    }
}
