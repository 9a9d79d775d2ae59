package org.tidegate.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A text that lacks a block which its kind must have is refused, with file, line and hint. What each letter must say is common
 * practice of testing services, no source; the cautions of the README name it.
 */
class LetterBlocksTest {

    private static final int RECORD = 6;

    @TempDir
    Path folder;

    /** Takes every block of every letter of every language out once. */
    @Test
    void noBlockOfAnyLetterCanBeLeftOut() throws Exception {
        SoftAssertions all = new SoftAssertions();
        for (String language : Rules.bundled().service().languages()) {
            String file = "texts/" + language + ".yaml";
            String whole = Files.readString(Path.of("rules", file));
            for (String[] block : blocks()) {
                Faults faults = new Faults();
                byte[] damaged = without(whole, block[0], block[1]).getBytes(StandardCharsets.UTF_8);
                new YamlFile(file, faults).read(damaged, LetterTexts.class);
                all.assertThat(faults.sorted())
                        .as("%s without %s.%s", language, block[0], block[1])
                        .singleElement()
                        .satisfies(f -> {
                            assertThat(f.file()).isEqualTo(file);
                            assertThat(f.what()).isEqualTo("the key '" + block[1] + "' is missing");
                            assertThat(f.line()).isPositive();
                            assertThat(f.hint()).isNotEmpty();
                        });
            }
        }
        all.assertAll();
    }

    @Test
    void theResultStandsFirstAndWhatMustFollowFollows() {
        SoftAssertions all = new SoftAssertions();
        Rules.bundled().texts().byLanguage().forEach((language, t) -> {
            for (ResultLetter letter : t.results()) {
                all.assertThat(letter.blocks().get(0)).as(language).isEqualTo(letter.result());
            }
            all.assertThat(t.negative().blocks())
                    .as(language)
                    .contains(t.negative().noAssurance(), t.negative().disposal());
            all.assertThat(t.positive().blocks())
                    .as(language)
                    .contains(
                            t.positive().isolation(),
                            t.positive().confirmation(),
                            t.positive().disposal());
            all.assertThat(t.invalid().blocks())
                    .as(language)
                    .contains(t.invalid().newKit(), t.invalid().disposal());
        });
        all.assertAll();
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            en; is negative. A trained;          is positive. A trained;             does not say 'negative'
            en; is negative. A trained;          is positive. A trained;             tells the result 'positive'
            en; A laboratory test should;        It is not negative. A laboratory test should; tells the result 'negative'
            en; We got your message at {received}. Thank you.; You are negative. {received}; tells the result 'negative'
            es; Te pedimos algo, pero;           La prueba es positiva, pero;        tells the result 'positiva'
            fr; Votre test du {test_date} ne compte pas; Votre test du {test_date} est négatif; tells the result 'négatif'
            pl; Test może go nie wykryć;         Nie masz wirusa;                    promises too much: 'nie masz wirusa'
            en; This does not prove that;        You are healthy, and;               promises too much: 'you are healthy'
            en; Please keep your cassette until then.; Keep it until {until}.;       uses {until}, which may not be known there
            en; {service}";                      {service}, {kit}";                  uses {kit}, which may not be known there
            en; We take back a letter ({ref});   We take back a letter ({test_date}); bears {test_date}
            en; We have your message ({ref});    You are positive ({ref});           tells a result
            es; Retiramos una carta ({ref});     La prueba no es válida ({ref});     tells a result
            en; Put the used kit into its bag and close it. Put it in the bin. Then wash your hands.; Your test of {test_date} is negative. A trained reader saw no line for the virus.; two blocks say the same
            en; You will hear from us by {new_time}.; You will hear from us soon.;   the text lacks {new_time}
            """)
    void oneFault(String language, String from, String to, String expected) throws Exception {
        String file = "texts/" + language + ".yaml";
        RulesFolder rules = RulesFolder.copyTo(folder.resolve("rules"));
        int line = rules.lineOf(file, from);
        assertThat(rules.edit(file, from, to).faults()).as(to).anySatisfy(f -> {
            assertThat(f.file()).isEqualTo(file);
            assertThat(f.toString()).contains(expected);
            assertThat(f.hint()).isNotEmpty();
            assertThat(f.line()).as(f.toString()).isBetween(1, line + RECORD);
        });
    }

    @Test
    void aListOfWhatIsNeverSaidIsNeeded() throws Exception {
        RulesFolder rules = RulesFolder.copyTo(folder.resolve("rules"));
        Path file = rules.path().resolve("texts/en.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("(?s)never_say:.*?\n\n", "never_say: []\n\n"));
        assertThat(rules.faults()).extracting(RuleFault::what).containsExactly("never_say is empty");
    }

    /** Letter and block as they are written in the files, and the two lines that every letter carries. */
    private static List<String[]> blocks() {
        List<String[]> all = new ArrayList<>();
        for (String frame : List.of("urgent_help", "questions", "caution", "greeting", "signature")) {
            all.add(new String[] {"", frame});
        }
        for (RecordComponent letter : LetterTexts.class.getRecordComponents()) {
            if (Stream.of(Letter.class, RequestLetter.class).anyMatch(k -> k.isAssignableFrom(letter.getType()))) {
                for (RecordComponent block : letter.getType().getRecordComponents()) {
                    all.add(new String[] {Names.snake(letter.getName()), Names.snake(block.getName())});
                }
            }
        }
        return all;
    }

    private static String without(String whole, String letter, String block) {
        int from = letter.isEmpty() ? 0 : whole.indexOf("\n" + letter + ":\n") + 1;
        String line = (letter.isEmpty() ? "\n" : "\n  ") + block + ":";
        int at = whole.indexOf(line, from);
        assertThat(at).as("%s.%s", letter, block).isPositive();
        return whole.substring(0, at) + whole.substring(whole.indexOf('\n', at + 1));
    }
}
