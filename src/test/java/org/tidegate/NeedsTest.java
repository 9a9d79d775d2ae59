package org.tidegate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class NeedsTest {

    /** An assumption of the test library would be skipped in CI without a word. */
    @Test
    void everySkipGoesThroughNeeds() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            List<Path> around = files.filter(f -> f.toString().endsWith(".java"))
                    .filter(f -> !f.getFileName().toString().startsWith("Needs"))
                    .filter(NeedsTest::skips)
                    .toList();
            assertThat(around).isEmpty();
        }
    }

    private static boolean skips(Path file) {
        try {
            String text = Files.readString(file);
            return Stream.of("api.Assumptions", "TestAbortedException", "@Disabled")
                    .anyMatch(text::contains);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
