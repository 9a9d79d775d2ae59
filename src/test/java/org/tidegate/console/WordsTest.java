package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxState;
import org.tidegate.work.SubmissionState;

class WordsTest {

    private static Words words(Locale locale) {
        ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
        messages.setBasename("console/messages");
        messages.setDefaultEncoding("UTF-8");
        messages.setFallbackToSystemLocale(false);
        return new Words(ZoneId.of("Europe/London"), locale, messages);
    }

    /** The clocks went back at 01:00 UTC on 25 October 2026: The Summer Time Order 2002 (S.I. 2002/262), last Sunday of October. */
    @ParameterizedTest
    @CsvSource({"2026-10-25T00:30:00Z, 01:30 BST", "2026-10-25T01:30:00Z, 01:30 GMT", "2026-05-04T06:54:00Z, 07:54 BST"
    })
    void theHourThatComesTwiceIsToldApart(Instant time, String clock) {
        assertThat(words(Locale.UK).clock(time)).isEqualTo(clock);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-05-04T09:14:00Z, 14 min left",
        "2026-05-04T08:55:00Z, 5 min over",
        "2026-05-04T11:05:00Z, 2 h 05 min left",
        "2026-05-08T09:00:00Z, 4 days left"
    })
    void timeLeftIsSaidInWords(Instant until, String said) {
        assertThat(words(Locale.UK).left(until, Instant.parse("2026-05-04T09:00:00Z")))
                .isEqualTo(said);
    }

    @Test
    void bothLanguagesHaveTheSameWords() throws IOException {
        Properties english = bundle("messages.properties");
        Properties spanish = bundle("messages_es.properties");
        assertThat(spanish.keySet()).isEqualTo(english.keySet());
        english.forEach((key, value) -> assertThat(places(String.valueOf(spanish.get(key))))
                .as(key.toString())
                .isEqualTo(places(String.valueOf(value))));
    }

    @Test
    void everyCodeHasAName() throws IOException {
        Properties english = bundle("messages.properties");
        assertThat(Arrays.stream(DiscrepancyCode.values()).map(c -> "code." + c.code()))
                .allMatch(english::containsKey);
        assertThat(Arrays.stream(SubmissionState.values()).map(s -> "state." + s.code()))
                .allMatch(english::containsKey);
        assertThat(Arrays.stream(LetterKind.values()).map(k -> "letter." + k.code()))
                .allMatch(english::containsKey);
        assertThat(Arrays.stream(OutboxState.values()).map(s -> "outbox." + s.code()))
                .allMatch(english::containsKey);
    }

    private static String places(String text) {
        return text.replaceAll("[^{}0-9]", "")
                .replaceAll("(?<!\\{)[0-9]+", "")
                .chars()
                .sorted()
                .mapToObj(c -> "" + (char) c)
                .reduce("", String::concat);
    }

    private static Properties bundle(String name) throws IOException {
        Properties properties = new Properties();
        try (InputStreamReader in = new InputStreamReader(
                Objects.requireNonNull(WordsTest.class.getResourceAsStream("/console/" + name)),
                StandardCharsets.UTF_8)) {
            properties.load(in);
        }
        return properties;
    }
}
