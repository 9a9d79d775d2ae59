package org.tidegate.mailbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.message.Limits;
import org.tidegate.message.MailMessage;
import org.tidegate.message.MessageReader;

/** Letters written and read again by our own reader; nobody's words write a header. */
class LetterTest {

    private static final String EVIL = "x\r\nBcc: everyone@tarnpost.example";

    private static Letter letter(String to, String subject, String text, String answered, List<String> references) {
        return new Letter(
                "results@skarrasound.example",
                "Skarra Sound Crew Health",
                to,
                "a1@skarrasound.example",
                ZonedDateTime.parse("2026-05-04T08:50:30+01:00"),
                "en",
                subject,
                text,
                Optional.of(answered),
                references,
                Optional.empty());
    }

    private static String headers(Letter letter) {
        String raw = new String(letter.mail().raw(), StandardCharsets.UTF_8);
        return raw.substring(0, raw.indexOf("\r\n\r\n"));
    }

    @Test
    void bearsThreadTextAndTheSameAsHtml() {
        Letter letter = letter(
                "maren@tarnpost.example",
                "Twój test",
                "Hello <Łukasz>,\n\nsend it\nby 08:54.",
                "m1@x.example",
                List.of("m0@x.example", "m1@x.example"));
        MailMessage read = MessageReader.read(letter.mail().raw(), Limits.standard());
        assertThat(read.envelope().subject()).contains("Twój test");
        assertThat(read.envelope().references()).containsExactly("m0@x.example", "m1@x.example");
        assertThat(read.envelope().text()).contains("Hello <Łukasz>,");
        String raw = new String(letter.mail().raw(), StandardCharsets.UTF_8);
        assertThat(raw).contains("multipart/alternative").contains("&lt;").doesNotContain("<Łukasz>,</p>");
    }

    @Test
    void aFileGoesBesideTheLetterAndNotInItsPlace() {
        byte[] content = "%PDF-1.7 a page".getBytes(StandardCharsets.UTF_8);
        Letter plain = letter("maren@tarnpost.example", "Times", "Hello", "m1@x.example", List.of());
        Letter letter = new Letter(
                plain.sender(),
                plain.senderName(),
                plain.to(),
                plain.messageId(),
                plain.date(),
                plain.language(),
                plain.subject(),
                plain.text(),
                plain.inReplyTo(),
                plain.references(),
                Optional.of(new Letter.File(EVIL + ".pdf", "application/pdf", content)));
        MailMessage read = MessageReader.read(letter.mail().raw(), Limits.standard());
        assertThat(read.envelope().text()).contains("Hello");
        assertThat(read.attachments()).singleElement().satisfies(a -> {
            assertThat(a.content()).isEqualTo(content);
            assertThat(a.declaredType()).isEqualTo("application/pdf");
        });
        assertThat(new String(letter.mail().raw(), StandardCharsets.UTF_8)).doesNotContain("\nBcc:");
    }

    @Test
    void lineBreaksInASubjectOrAThreadWriteNoHeader() {
        String headers = headers(letter("maren@tarnpost.example", EVIL, "Hello", EVIL, List.of(EVIL, "m1@x.example")));
        assertThat(headers.lines()).noneMatch(l -> l.startsWith("Bcc"));
        assertThat(headers).doesNotContain("In-Reply-To").contains("References: <m1@x.example>");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "nobody", "a@b@c", "maren@tarnpost.example\r\nBcc: x@tarnpost.example", "two words@x.example"
            })
    void anAddressThatIsNoneIsRefused(String to) {
        assertThatThrownBy(() -> letter(to, "s", "t", "m1@x.example", List.of()).mail())
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aLongThreadKeepsItsNewestMessages() {
        List<String> thread =
                IntStream.range(0, 500).mapToObj(i -> "m" + i + "@x.example").toList();
        String headers = headers(letter("maren@tarnpost.example", "s", "t", "m499@x.example", thread));
        assertThat(headers).contains("<m499@x.example>").doesNotContain("<m400@x.example>");
        // RFC 5322 §2.1.1
        assertThat(headers.lines()).allMatch(l -> l.length() <= 998);
    }
}
