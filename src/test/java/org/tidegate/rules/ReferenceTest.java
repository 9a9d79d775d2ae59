package org.tidegate.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Schemas and reference in {@code shared/} are what the definitions say, and the live rules pass an independent validator. */
class ReferenceTest {

    private static final JsonMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
    private static final Path SCHEMAS = Path.of("shared/schemas/rules");

    static Map<String, Type> files() {
        Map<String, Type> files = new LinkedHashMap<>();
        RulesReader.sectionComponents().forEach(c -> files.put(Names.snake(c.getName()) + ".yaml", c.getGenericType()));
        files.put("texts/LANGUAGE.yaml", LetterTexts.class);
        return files;
    }

    static Iterable<String> fileNames() {
        return files().keySet();
    }

    @ParameterizedTest
    @MethodSource("fileNames")
    void schemaIsCurrent(String file) throws IOException {
        assertCurrent(
                schemaFile(file), JSON.writeValueAsString(SchemaWriter.of("rules/" + file, files().get(file))) + "\n");
    }

    @Test
    void referenceIsCurrent() throws IOException {
        assertCurrent(Path.of("shared/rules-reference.md"), ReferenceWriter.write(files()));
    }

    @ParameterizedTest
    @MethodSource("fileNames")
    void liveRulesPassAnIndependentValidator(String file) throws IOException {
        for (String name : file.contains("LANGUAGE") ? Rules.bundled().service().languages() : List.of("")) {
            Path rules = Path.of("rules", file.replace("LANGUAGE", name));
            assertThat(violations(file, Files.readString(rules)))
                    .as(rules.toString())
                    .isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}: {1} → {2}")
    @CsvSource(delimiter = ';', textBlock = """
            timing.yaml;   grace: PT1M;            grase: PT1M
            timing.yaml;   grace: PT1M;            grace: 1 minute
            checks.yaml;   code: read-early;       code: read-erly
            service.yaml;  replies_per_address: 5; replies_per_address: 0
            limits.yaml;   parts: 500;             parts: many
            """)
    void theValidatorRefusesWhatTheReaderRefuses(String file, String from, String to) throws IOException {
        String damaged = Files.readString(Path.of("rules", file)).replace(from, to);
        assertThat(violations(file, damaged)).as(to).isNotEmpty();
    }

    private static List<Error> violations(String file, String yaml) throws IOException {
        Object loaded = new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml);
        JsonNode node = JSON.valueToTree(loaded);
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(schemaFile(file)))
                .validate(node);
    }

    private static Path schemaFile(String file) {
        return SCHEMAS.resolve(file.replace("/LANGUAGE", "").replace(".yaml", ".schema.json"));
    }

    /** Where the file differs or is missing, a candidate is written beside the build's output, to be looked at and copied. */
    private static void assertCurrent(Path file, String expected) throws IOException {
        if (Files.exists(file) && Files.readString(file).equals(expected)) {
            return;
        }
        Path candidate = Path.of("target/candidates").resolve(file);
        Files.createDirectories(candidate.getParent());
        Files.writeString(candidate, expected);
        assertThat(file)
                .as("stale; look at %s, then: cp -r target/candidates/shared .", candidate)
                .hasContent(expected);
    }
}
