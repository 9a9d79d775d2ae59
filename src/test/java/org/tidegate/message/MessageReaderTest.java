package org.tidegate.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MessageReaderTest {

    /** RFC 5322 appendix A.1.1, "A message from one person to another with simple addressing", and A.6.1 in obsolete form. */
    @Test
    void readsTheExamplesOfRfc5322() {
        MailMessage simple = read("From: John Doe <jdoe@machine.example>\nTo: Mary Smith <mary@example.net>\n"
                + "Subject: Saying Hello\nDate: Fri, 21 Nov 1997 09:55:06 -0600\nMessage-ID: <1234@local.machine.example>\n\n"
                + "This is a message just to say hello.\nSo, \"Hello\".\n");
        assertThat(simple.envelope().from()).extracting(Mailbox::address).containsExactly("jdoe@machine.example");
        assertThat(simple.envelope().date().orElseThrow().instant()).isEqualTo(Instant.parse("1997-11-21T15:55:06Z"));
        assertThat(simple.envelope().messageId()).contains("1234@local.machine.example");
        assertThat(simple.envelope().text()).startsWith("This is a message just to say hello.");
        assertThat(simple.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Fri, 21 Nov 1997 09(comment):   55  :  06 -0600 | 1997-11-21T15:55:06Z
            21 Nov 97 09:55:06 GMT                          | 1997-11-21T09:55:06Z
            Thu, 13 Feb 1969 23:32 -0330                    | 1969-02-14T03:02:00Z
            Mon, 4 May 26 08:23:12 +0100 (BST)              | 2026-05-04T07:23:12Z
            Mon May  4 08:23:12 2026                        | 2026-05-04T08:23:12Z
            Mon, 4 May 2026 00:23:12 PDT                    | 2026-05-04T07:23:12Z
            """)
    void readsDatesInEveryForm(String text, Instant meant) {
        assertThat(HeaderDates.parse(text).orElseThrow().instant()).as(text).isEqualTo(meant);
    }

    @Test
    void anUnknownZoneStaysUnknown() {
        HeaderDate date = HeaderDates.parse("Mon, 4 May 2026 08:23:12 -0000").orElseThrow();
        assertThat(date.offset()).isEmpty();
        assertThat(date.known()).contains(Instant.parse("2026-05-04T08:23:12Z"));
        assertThat(date.wall()).isEqualTo(LocalDateTime.parse("2026-05-04T08:23:12"));
    }

    @Test
    void takesThePeerFromTheObservedAddressNotFromTheHelo() {
        TraceHop hop = Trace.hop(
                0,
                "from [10.0.0.1] (out.fern.example [198.51.100.7]) by mx.skarrasound.example with ESMTPS"
                        + " id x; Mon, 4 May 2026 08:23:12 +0100");
        assertThat(hop.peer()).contains("198.51.100.7");
        assertThat(hop.by()).contains("mx.skarrasound.example");
        assertThat(hop.time().orElseThrow().instant()).isEqualTo(Instant.parse("2026-05-04T07:23:12Z"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Auto-Submitted: auto-replied                       | AUTOMATIC_REPLY
            Auto-Submitted: no                                 | PERSONAL
            List-Id: <crew.harbour.example>                    | LIST
            Precedence: bulk                                   | LIST
            Content-Type: multipart/report; boundary=x         | BOUNCE
            Return-Path: <>                                    | BOUNCE
            Subject: my result                                 | PERSONAL
            """)
    void tellsAutomaticMailFromPeople(String header, Nature nature) {
        assertThat(read("From: a@fern.example\n" + header + "\n\nhi\n")
                        .envelope()
                        .nature())
                .as(header)
                .isEqualTo(nature);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n",
                "no header at all",
                "Subject: =?utf-8?B?###?=\n\n",
                "Content-Type: multipart/mixed\n\n--x\n",
                "Content-Type: multipart/mixed; boundary=\"\n\n--\n",
                "From: <<<>>>,,\nReceived: ;;;\n\n",
                "Content-Type: image/jpeg\nContent-Transfer-Encoding: base64\n\n!!!!\n",
                "Content-Type: text/plain; charset=klingon\n\n\u00e9"
            })
    void neverFailsOnMalformedInput(String raw) {
        assertThat(read(raw)).isNotNull();
    }

    @Test
    void neverFailsOnNoise() {
        Random random = new Random(20260504);
        for (int i = 0; i < 200; i++) {
            byte[] noise = new byte[random.nextInt(3000)];
            random.nextBytes(noise);
            assertThat(MessageReader.read(noise, Limits.standard())).isNotNull();
        }
    }

    private static MailMessage read(String text) {
        return MessageReader.read(text.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8), Limits.standard());
    }
}
