package org.tidegate.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;

/** Passwords and tokens in files. */
final class Secrets {

    private Secrets() {}

    /** The first line, read anew each time: another program may keep it fresh. */
    static Supplier<String> firstLine(Path file) {
        return () -> {
            try {
                return Files.readString(file, StandardCharsets.UTF_8)
                        .lines()
                        .findFirst()
                        .orElse("")
                        .strip();
            } catch (IOException e) {
                throw new Refusal(file + " cannot be read: " + e.getMessage(), e);
            }
        };
    }
}
