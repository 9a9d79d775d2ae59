package org.tidegate.examination.subject;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Tables that come with the program: {@code key = value} lines, comments after a hash. */
final class Resources {

    private Resources() {}

    record Row(String key, String value) {}

    static List<Row> rows(String name) {
        try (InputStream in = Resources.class.getResourceAsStream("/subject/" + name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.isBlank() && !l.startsWith("#"))
                    .map(l -> l.split(" = ", 2))
                    .map(p -> new Row(p[0].strip(), p[1].strip()))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
