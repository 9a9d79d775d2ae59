package org.tidegate.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.Needs;
import tools.jackson.databind.json.JsonMapper;

class CanonicalJsonTest {

    /** RFC 8785 test files of its author (shared/data/standards/jcs); those with fractions and null are outside our restriction. */
    @ParameterizedTest
    @ValueSource(strings = {"french", "unicode", "weird"})
    void outsideFilesComeOutByteForByte(String name) throws IOException {
        Path folder = Path.of(System.getProperty("tidegate.data", "../shared/data"), "standards/jcs/testdata");
        Needs.outside(folder);
        Object value = new JsonMapper()
                .readValue(folder.resolve("input/" + name + ".json").toFile(), Object.class);
        assertThat(CanonicalJson.write(value))
                .asString(StandardCharsets.UTF_8)
                .isEqualTo(Files.readString(folder.resolve("output/" + name + ".json")));
    }

    @Test
    void theLeafFormatIsPinnedForGood() {
        LedgerEvent event = new LedgerEvent(
                7,
                Instant.parse("2026-05-04T06:34:00.125Z"),
                "assessed",
                "daemon",
                List.of("read-late", "no-id"),
                new TreeMap<>(Map.of("submission", "s-1", "message", "ab12")));
        assertThat(LeafFormat.encode(event))
                .asString(StandardCharsets.UTF_8)
                .isEqualTo("{\"codes\":[\"read-late\",\"no-id\"],\"kind\":\"assessed\","
                        + "\"refs\":{\"message\":\"ab12\",\"submission\":\"s-1\"},\"seq\":7,"
                        + "\"time\":\"2026-05-04T06:34:00.125Z\",\"v\":1,\"who\":\"daemon\"}");
    }

    @Test
    void whatHasNoCanonicalFormIsRefused() {
        for (Object refused : List.of(1.5, "\ud800", (1L << 53) + 1)) {
            assertThatThrownBy(() -> CanonicalJson.write(refused))
                    .as("%s", refused)
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }
}
