package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.finding.DiscrepancyCode;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the commands say passes the schemas of {@code shared/schemas}, checked by an independent validator. */
class OutputSchemasTest {

    private static final Path SAMPLE = Path.of("sample-mailbox");
    private static final JsonMapper JSON = new JsonMapper();
    private static List<String> examined = List.of();

    /** A clean one, a wrong phone, one undecided, an absence note, two namesakes, an unsafe file. */
    @BeforeAll
    static void examine() {
        Object[] words = Stream.concat(
                        Stream.of("examine", "--appointments", SAMPLE.resolve("appointments.csv")),
                        Stream.of(
                                        "01-perfect",
                                        "04-phone-three-hours-fast",
                                        "13-late-in-transit",
                                        "20-out-of-office",
                                        "27-namesakes",
                                        "49-program")
                                .map(name -> SAMPLE.resolve(name + ".eml")))
                .toArray();
        examined = Ran.command(words).out().lines().toList();
    }

    @Test
    void examineKeepsItsSchema() throws IOException {
        assertThat(examined).hasSize(6);
        for (String line : examined) {
            assertThat(violations("examine", JSON.readTree(line))).as(line).isEmpty();
        }
    }

    /** The schema is no rubber stamp: each damage is refused. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            "outcome":"match";        "outcome":"maybe"
            "outcome":"match";        "outcome":"none"
            "verdict":"inside";       "verdict":"undetermined"
            "level":3;                "level":5
            "margin":"PT;             "margin":"
            "ref":;                   "reference":
            "attempt":1,;             ''
            timer-within-1-min;       timer-within-2-min
            """)
    void theExamineSchemaRefusesDamage(String from, String to) throws IOException {
        String damaged = examined.get(0).replaceFirst(java.util.regex.Pattern.quote(from), to);
        assertThat(damaged).isNotEqualTo(examined.get(0));
        assertThat(violations("examine", JSON.readTree(damaged))).as(damaged).isNotEmpty();
    }

    @Test
    void theExamineSchemaKnowsEveryCode() throws IOException {
        List<String> known = new ArrayList<>();
        JSON.readTree(Files.readString(schema("examine")))
                .at("/$defs/discrepancy/properties/code/enum")
                .forEach(c -> known.add(c.asString()));
        assertThat(known)
                .containsExactlyElementsOf(Stream.of(DiscrepancyCode.values())
                        .map(DiscrepancyCode::code)
                        .toList());
    }

    @Test
    void timingKeepsItsSchemas() throws IOException {
        assertThat(violations("timing-question", JSON.readTree(TimingCommandTest.QUESTION)))
                .isEmpty();
        String answer = TimingCommandTest.run(TimingCommandTest.QUESTION).out();
        assertThat(violations("timing-answer", JSON.readTree(answer)))
                .as(answer)
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            "earlier":"epoch";  "earlier":"noon"
            "kind":"clinic";    "kind":"church"
            "from":"PT20M",;    ''
            "check":"photo";    "check":"read"
            """)
    void theTimingSchemaRefusesWhatTheCommandRefuses(String from, String to) throws IOException {
        String damaged = TimingCommandTest.QUESTION.replace(from, to);
        assertThat(violations("timing-question", JSON.readTree(damaged)))
                .as(damaged)
                .isNotEmpty();
        assertThat(TimingCommandTest.run(damaged).code()).isEqualTo(2);
    }

    private static List<Error> violations(String name, JsonNode node) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(schema(name)))
                .validate(node);
    }

    private static Path schema(String name) {
        return Path.of("shared/schemas", name + ".schema.json");
    }
}
