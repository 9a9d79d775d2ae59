package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class ViewerTest {

    /** What a reader sees is what was sent: no rule of the pages may change colours or edges of a photo. */
    @Test
    void nothingEnhancesAPhoto() throws IOException {
        assertThat(resource("tidegate.css") + resource("tidegate.js"))
                .doesNotContain(
                        "filter:",
                        "mix-blend",
                        "backdrop-filter",
                        "image-rendering",
                        "contrast(",
                        "<canvas",
                        "getContext");
    }

    private static String resource(String name) throws IOException {
        try (var in = Objects.requireNonNull(ViewerTest.class.getResourceAsStream("/console/static/" + name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
