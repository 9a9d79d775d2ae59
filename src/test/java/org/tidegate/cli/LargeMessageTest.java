package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.casework.Kept;
import org.tidegate.rules.Rules;
import org.tidegate.store.StoredMessage;

/**
 * A message of 140 MB among small ones, taken by {@code watch --drain} under {@code -Xmx512m} with
 * {@code mvn -Dfast test -Dtest=LargeMessageTest -Dsimulation.share=1}; an ordinary run takes one of 24 MB under 128 MB.
 */
class LargeMessageTest {

    private static final boolean FULL = Double.parseDouble(System.getProperty("simulation.share", "0.1")) >= 1;
    private static final int BYTES = FULL ? 140_000_000 : 24_000_000;
    private static final String HEAP = FULL ? "512m" : "128m";

    /** The film of the full run is beyond the limit of one file (60 MiB), the other is a file that shows nothing here. */
    private static final String NAMED = FULL ? "hold:attachment-unsafe" : "hold:format-unsupported";

    @TempDir
    Path folder;

    @Test
    void isKeptWholeAndItsFileIsNamed() throws Exception {
        try (CrashMail mail = new CrashMail()) {
            mail.deliver(2);
            mail.deliver(large());
            mail.deliver(2);
            Path log = folder.resolve("watch.log");
            WatchChild watch = WatchChild.start(log, HEAP, Main.class, watching(mail.port()));
            assertThat(watch.says("Taken: 5. Everything is examined."))
                    .as(Files.readString(log))
                    .isTrue();
            assertThat(watch.code()).isZero();
            assertThat(mail.marked()).isEqualTo(5);
            try (Desk desk =
                    Desk.open(DeskConfig.embedded(folder.resolve("data"), Rules.bundled(), Clock.systemUTC()))) {
                kept(desk, mail.delivered());
            }
        }
    }

    private static void kept(Desk desk, List<byte[]> delivered) {
        List<StoredMessage> messages = Kept.messages(desk);
        assertThat(messages).hasSameSizeAs(delivered);
        StoredMessage large =
                messages.stream().filter(m -> m.size() == BYTES).findFirst().orElseThrow();
        assertThat(Arrays.equals(desk.vault().raw(large).orElseThrow(), delivered.get(2)))
                .as("byte for byte")
                .isTrue();
        List<String> codes = desk.store()
                .read(tx -> tx.assessments().newest(large.submission().orElseThrow()))
                .orElseThrow()
                .codes();
        assertThat(codes).contains(NAMED);
    }

    /** A mail whose one file is far over the limit of what is looked into. */
    private static byte[] large() {
        byte[] raw = new byte[BYTES];
        byte[] head = ("From: Crew <crew@tarnpost.example>\r\nSubject: Crew Member 07:02 QUAY\r\n"
                        + "MIME-Version: 1.0\r\nContent-Type: multipart/mixed; boundary=b\r\n\r\n--b\r\n\r\nSee the video.\r\n"
                        + "--b\r\nContent-Type: video/mp4; name=film.mp4\r\nContent-Transfer-Encoding: base64\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
        byte[] tail = "\r\n--b--\r\n".getBytes(StandardCharsets.US_ASCII);
        Random random = new Random(140);
        for (int i = 0; i < raw.length; i++) {
            int column = (i - head.length) % 78;
            raw[i] = column == 76 ? (byte) '\r' : column == 77 ? (byte) '\n' : (byte) ('A' + random.nextInt(26));
        }
        System.arraycopy(head, 0, raw, 0, head.length);
        System.arraycopy(tail, 0, raw, raw.length - tail.length, tail.length);
        return raw;
    }

    private Object[] watching(int port) throws Exception {
        return new Object[] {
            "watch",
            "--drain",
            "--data",
            folder.resolve("data"),
            "--imap-host",
            "127.0.0.1",
            "--imap-port",
            port,
            "--imap-tls",
            "plain",
            "--imap-user",
            CrashMail.USER,
            "--imap-password-file",
            Files.writeString(folder.resolve("secret"), CrashMail.PASSWORD)
        };
    }
}
