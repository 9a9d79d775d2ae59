package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.rules.Rules;
import org.tidegate.rules.Wording;
import org.tidegate.work.SubmissionId;

/** What a letter asks for, and when it no longer asks. */
class RequestWriterTest {

    @TempDir
    Path folder;

    private SampleDesk sample;

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder, Instant.parse("2026-05-04T06:50:00Z"));
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private Optional<String> letter(SubmissionId id, String language) {
        return sample.desk().replying().draft(id, Optional.of(language)).map(Replying.Draft::text);
    }

    @Test
    void asksForANewPhotoWhileOneCounts() {
        SubmissionId id = sample.take("10-read-early.eml");
        assertThat(letter(id, "en").orElseThrow())
                .contains("The lines were not ready. Please take a new one. Take it between 07:53 and 08:03")
                .contains("Just answer this message")
                .doesNotContain("It is too late");
    }

    @Test
    void tellsNotToTakeOneAfterwards() {
        SubmissionId id = sample.take("10-read-early.eml");
        sample.pass(Duration.ofHours(3));
        assertThat(letter(id, "en").orElseThrow())
                .contains(
                        "The lines were not ready.\n\nIt is too late to put this right. Please do not take a new photo now.")
                .doesNotContain("Please take a new one", "After that", "Just answer this message");
    }

    /** A day later nothing of the sample morning can be put right: no letter in any language asks for it. */
    @Test
    void asksForNothingThatWouldComeTooLate() throws IOException {
        List<String> messages;
        try (Stream<Path> all = Files.list(Path.of("sample-mailbox"))) {
            messages = all.map(p -> p.getFileName().toString())
                    .filter(n -> n.endsWith(".eml"))
                    .sorted()
                    .toList();
        }
        List<SubmissionId> taken =
                messages.stream().map(sample::take).distinct().toList();
        sample.pass(Duration.ofDays(1));
        Rules rules = Rules.bundled();
        int letters = 0;
        for (String language : rules.texts().byLanguage().keySet()) {
            List<String> asked = rules.texts().forLanguage(language).discrepancies().values().stream()
                    .filter(w -> w.until().isPresent())
                    .map(Wording::please)
                    .flatMap(Optional::stream)
                    .map(t -> t.text())
                    .toList();
            for (SubmissionId id : taken) {
                Optional<String> letter = letter(id, language);
                letter.ifPresent(text -> assertThat(asked).noneMatch(text::contains));
                letters += letter.isPresent() ? 1 : 0;
            }
        }
        assertThat(letters).isGreaterThan(60);
    }
}
