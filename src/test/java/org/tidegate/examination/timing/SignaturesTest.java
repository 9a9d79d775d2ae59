package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tidegate.Needs;
import org.tidegate.finding.Clue;
import org.tidegate.finding.Event;
import org.tidegate.message.Limits;
import org.tidegate.message.MessageReader;
import org.tidegate.message.RecordedKey;

/**
 * The signing time of the RSA signature in RFC 8463 A.3 ({@code t=1528637909}), from lieser/dkim_verifier (MIT), where it lies beside
 * this project; {@code date -u -d @1528637909} gives 2018-06-10 13:38:29.
 */
class SignaturesTest {

    private static final Path DATA = Path.of(System.getProperty("tidegate.data", "../shared/data"));
    private static final Instant SIGNED = Instant.parse("2018-06-10T13:38:29Z");

    @Test
    void boundTheSendingWhereTheyHold() throws IOException {
        List<Clue> clues = clues(message(), SIGNED.plusSeconds(40));
        assertThat(clues).singleElement().satisfies(clue -> {
            assertThat(clue.later()).isEqualTo(Event.signed(0));
            assertThat(clue.lo().map(Instant.EPOCH::plus)).contains(SIGNED);
            assertThat(clue.leansOn())
                    .extracting(Object::toString)
                    .containsExactly("server-honest(football.example.com)");
            assertThat(clue.words())
                    .isEqualTo("the mail service football.example.com signed the message at 13:38:29 (UTC)");
        });
    }

    @Test
    void proveNothingWhereTheBodyWasChanged() throws IOException {
        String changed = message().replace("We lost the game.", "We won the game.");
        assertThat(clues(changed, SIGNED.plusSeconds(40))).isEmpty();
    }

    @Test
    void proveNothingLongBeforeTheArrival() throws IOException {
        assertThat(clues(message(), SIGNED.plusSeconds(3600))).isEmpty();
    }

    private static List<Clue> clues(String message, Instant arrived) throws IOException {
        Wording wording = new Wording(ZoneOffset.UTC, LocalDate.of(2018, 6, 10));
        var envelope = MessageReader.read(
                        message.getBytes(StandardCharsets.UTF_8), Limits.standard(), RecordedKey.source(keys()))
                .envelope();
        return new Signatures(envelope, Optional.of(arrived), Scene.RULES.timing(), wording)
                .clues().stream().map(Constraint::clue).toList();
    }

    private static String message() throws IOException {
        Path path = DATA.resolve("mail/dkim-verifier/test/data/rfc8463-A.3.eml");
        Needs.outside(path);
        return Files.readString(path);
    }

    private static List<RecordedKey> keys() throws IOException {
        return Files.readAllLines(DATA.resolve("standards/check-values/dkim_dns_records.tsv")).stream()
                .flatMap(line -> RecordedKey.parse(line).stream())
                .toList();
    }
}
