package org.tidegate.message;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Nothing in a message may crash its reading or make it work beyond the limits. */
class HostileMailTest {

    private static final Limits SMALL = new Limits(4_000_000, 400_000, 500, 100, 8, 100_000, 300_000, 10_000, 5, 5);

    private static Map<String, String> hostile() {
        Map<String, String> all = new TreeMap<>();
        all.put("header without end", "X: " + "y".repeat(3_000_000));
        all.put("many fields", "X: y\r\n".repeat(300_000));
        all.put("carriage returns", "Subject: " + "\r".repeat(390_000) + "x\r\n\r\n");
        all.put("spaces in a date", "Date: 4" + " ".repeat(390_000) + "x\r\n\r\n");
        all.put("Received of brackets", "Received: from " + "([".repeat(190_000) + "\r\n\r\n");
        all.put("Received of semicolons", "Received: " + "; by ".repeat(70_000) + "\r\n\r\n");
        all.put("comments nested", "From: " + "(".repeat(390_000) + "a@b\r\n\r\n");
        all.put("encoded-words", "Subject: " + "=?utf-8?Q?=".repeat(30_000) + "\r\n\r\n");
        all.put("parameters", "Content-Type: a/b" + "; x*0*=\"\\\"".repeat(30_000) + "\r\n\r\n");
        all.put("quotes", "Content-Type: a/b; x=\"" + "\\".repeat(390_000) + "\r\n\r\n");
        all.put("quoted pairs", "Content-Type: a/b; x=\"" + "a\\b".repeat(120_000) + "\r\n\r\n");
        all.put("results", "Authentication-Results: a; " + "x=y header.d= ".repeat(25_000) + "\r\n\r\n");
        all.put("addresses", "To: " + "a@b,".repeat(90_000) + "\r\n\r\n");
        all.put("parts", "Content-Type: multipart/mixed; boundary=b\r\n\r\n" + "--b\r\n\r\n".repeat(200_000));
        all.put("nested parts", nested(2_000));
        all.put("nested messages", "Content-Type: message/rfc822\r\n\r\n".repeat(5_000) + "x");
        all.put("html", "Content-Type: text/html\r\n\r\n" + "<div>".repeat(100_000));
        all.put("html of breaks", "Content-Type: text/html\r\n\r\n" + "<br> ".repeat(70_000));
        all.put(
                "large file",
                "Content-Type: image/png\r\nContent-Transfer-Encoding: base64\r\n\r\n" + "AAAA".repeat(200_000));
        return all;
    }

    private static String nested(int depth) {
        StringBuilder mail = new StringBuilder();
        for (int i = 0; i < depth; i++) {
            mail.append("Content-Type: multipart/mixed; boundary=b")
                    .append(i)
                    .append("\r\n\r\n--b")
                    .append(i)
                    .append("\r\n");
        }
        return mail.toString();
    }

    private static Set<String> cases() {
        return hostile().keySet();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void staysWithinTheLimits(String name) {
        byte[] raw = hostile().get(name).getBytes(StandardCharsets.US_ASCII);
        MailMessage message = MessageReader.read(raw, SMALL);
        assertThat(message.attachments()).as(name).hasSizeLessThanOrEqualTo(SMALL.parts());
        assertThat(message.envelope().text()).as(name).hasSizeLessThanOrEqualTo(SMALL.textChars());
        assertThat(message.problems()).as(name).hasSizeLessThan(500);
    }

    /** A whole message with everything in it, damaged at seeded places. */
    @Test
    void survivesDamageAnywhere() {
        byte[] whole = SampleMail.withEverything();
        Random random = new Random(20260504);
        for (int round = 0; round < 150; round++) {
            byte[] damaged = whole.clone();
            int hits = 1 + random.nextInt(30);
            for (int i = 0; i < hits; i++) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            }
            int length = random.nextInt(4) == 0 ? random.nextInt(damaged.length) : damaged.length;
            byte[] cut = Arrays.copyOf(damaged, length);
            assertThatCode(() -> MessageReader.read(cut, Limits.standard()))
                    .as("round %d", round)
                    .doesNotThrowAnyException();
        }
    }

    @Test
    void theSameBytesGiveTheSameReading() {
        byte[] whole = SampleMail.withEverything();
        MailMessage first = MessageReader.read(whole, Limits.standard());
        MailMessage second = MessageReader.read(whole, Limits.standard());
        assertThat(second.envelope()).isEqualTo(first.envelope());
        assertThat(second.problems()).isEqualTo(first.problems());
        assertThat(second.attachments()).usingRecursiveComparison().isEqualTo(first.attachments());
    }
}
