package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is wrong ends in one clear message that says what to do, a code other than 0, and no stack trace. */
class BadInputTest {

    private static final Path BOOK = Path.of("sample-mailbox/appointments.csv");

    @TempDir
    Path folder;

    @Test
    void anEmptyFile() throws IOException {
        refused(examine(Files.createFile(folder.resolve("empty.eml"))), "is empty");
    }

    @Test
    void aFileOfTwoHundredMegabytes() throws IOException {
        Path large = folder.resolve("large.eml");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(200_000_000);
        }
        refused(examine(large), "more than the limit");
    }

    @Test
    void aFolder() {
        refused(examine(folder), "is a folder");
    }

    @Test
    void aFileThatIsNotThere() {
        refused(examine(folder.resolve("nothing.eml")), "cannot be read");
    }

    @Test
    void binaryNoiseIsExaminedAndHeld() throws IOException {
        byte[] noise = new byte[20_000];
        new Random(7).nextBytes(noise);
        Ran ran = examine(Files.write(folder.resolve("noise.eml"), noise));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("\"severity\":\"hold\"");
    }

    @Test
    void aBookWithoutAColumn() throws IOException {
        Path book = folder.resolve("book.csv");
        Files.writeString(book, Files.readString(BOOK).replaceFirst("slot_start,", ""));
        refused(Ran.command("examine", "--appointments", book, "sample-mailbox/01-perfect.eml"), "slot_start");
    }

    @Test
    void aFaultInTheRules() throws IOException {
        copyRules();
        Path timing = folder.resolve("rules/timing.yaml");
        Files.writeString(timing, Files.readString(timing) + "\nunheard_of: 3\n");
        refused(Ran.command("check-rules", folder.resolve("rules")), "unheard_of");
    }

    @Test
    void anOccupiedPort() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            refused(Ran.command("demo", "--port", taken.getLocalPort()), "is taken by another program");
        }
    }

    @Test
    void aWrongPassword() throws Exception {
        try (DemoMail mail = new DemoMail()) {
            Path secret = Files.writeString(folder.resolve("secret"), "wrong\n");
            refused(
                    Ran.command(
                            "watch",
                            "--drain",
                            "--data",
                            folder.resolve("data"),
                            "--imap-host",
                            "127.0.0.1",
                            "--imap-port",
                            mail.account().server().port(),
                            "--imap-tls",
                            "plain",
                            "--imap-user",
                            "intake",
                            "--imap-password-file",
                            secret),
                    "refused the login");
        }
    }

    @Test
    void aFolderThatCanKeepNothing() throws IOException {
        Path data = Files.createDirectory(folder.resolve("data"));
        Files.createFile(data.resolve("blobs"));
        refused(Ran.command("take", "--data", data, "sample-mailbox/01-perfect.eml"), "The message cannot be kept");
    }

    @Test
    void aDatabaseThatIsNone() throws IOException {
        Path data = Files.createDirectory(folder.resolve("data"));
        Files.write(
                data.resolve("tidegate.db"),
                "no database, but long enough to be looked at ".repeat(100).getBytes(StandardCharsets.US_ASCII));
        Ran ran = Ran.command("audit-ledger", "--data", data);
        refused(ran, "cannot be opened");
        assertThat(ran.err().lines()).as(ran.err()).hasSize(1);
    }

    @Test
    void aPlainConnectionToElsewhere() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "x\n");
        refused(
                Ran.command(
                        "watch",
                        "--drain",
                        "--data",
                        folder.resolve("data"),
                        "--imap-host",
                        "mail.skarrasound.example",
                        "--imap-tls",
                        "plain",
                        "--imap-user",
                        "intake",
                        "--imap-password-file",
                        secret),
                "without TLS");
    }

    @Test
    void anUnknownCommandShowsTheUsage() {
        Ran ran = Ran.command("cleer");
        assertThat(ran.code()).isNotZero();
        assertThat(ran.err()).contains("cleer").doesNotContain("\tat ");
    }

    private static Ran examine(Path file) {
        return Ran.command("examine", "--appointments", BOOK, file);
    }

    private static void refused(Ran ran, String words) {
        assertThat(ran.code()).as(ran.out() + ran.err()).isNotZero();
        assertThat(ran.err()).contains(words).doesNotContain("\tat ").doesNotContain("fault of the program");
    }

    private void copyRules() throws IOException {
        try (var all = Files.walk(Path.of("rules"))) {
            for (Path from : all.toList()) {
                Path to = folder.resolve("rules")
                        .resolve(Path.of("rules").relativize(from).toString());
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(from, to);
                }
            }
        }
    }
}
