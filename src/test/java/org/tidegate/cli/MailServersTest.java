package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.Needs;
import org.tidegate.casework.ActionResult;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.casework.Replying;
import org.tidegate.mailbox.OutgoingMail;
import org.tidegate.mailbox.SendResult;
import org.tidegate.mailbox.Server;
import org.tidegate.mailbox.SmtpSender;
import org.tidegate.mailbox.TlsMode;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesFolder;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.Role;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/**
 * Outside check: the whole way between mail servers of other hands. Participants' mail comes in by SMTP through Exim, lies in Dovecot,
 * {@code watch} takes it over IMAP and answers through Exim with TLS and a login.
 */
@Tag("peer")
class MailServersTest {

    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final User OPERATOR = new User(new UserId("ada"), "ada", Set.of(Role.OPERATOR), "", true);

    @TempDir
    Path folder;

    private final Instant now = Instant.now().truncatedTo(ChronoUnit.MINUTES);
    private Rules rules;
    private Dovecot imap;
    private Exim smtp;

    @BeforeEach
    void start() throws Exception {
        Needs.that(
                Files.isExecutable(Dovecot.PROGRAM)
                        && Files.isExecutable(Exim.PROGRAM)
                        && "root".equals(System.getProperty("user.name")),
                "Dovecot and Exim (packages dovecot-imapd, exim4-daemon-light), run as root");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        imap = new Dovecot(Files.createDirectory(folder.resolve("dovecot")));
        smtp = new Exim(Files.createDirectory(folder.resolve("exim")), imap);
        rules = RulesFolder.copyTo(folder.resolve("rules"))
                .edit("service.yaml", "undo_delay: PT30S", "undo_delay: PT2S")
                .withoutHandover()
                .rules();
        book();
    }

    @AfterEach
    void stop() throws Exception {
        if (smtp != null) {
            smtp.close();
            imap.close();
        }
    }

    @Test
    void whatComesInIsAskedAnsweredAndTheAnswersReallyGoOut() throws Exception {
        WatchChild watch = watch();
        try {
            arrives(
                    "Jonas Vestergren",
                    "jonas.vestergren",
                    clock(now.minusSeconds(900)) + ", Quay clinic",
                    "Here it is.");
            arrives(
                    "Alice Thurlestane",
                    "alice.thurlestane",
                    "How long",
                    "Do I have to keep the cassette after the letter?");
            arrives(
                    "Unknown Person",
                    "unknown.person",
                    "A question",
                    "May I use last year's kit for this, or is it too old?");
            MimeMessage asked = await(() -> wentTo("jonas.vestergren@tarnpost.example"));
            assertThat(asked.getHeader("In-Reply-To", null)).isEqualTo("<jonas.vestergren@tarnpost.example>");
            assertThat(asked.getHeader("Auto-Submitted", null)).isEqualTo("auto-replied");
            assertThat(asked.getSubject()).contains("SS-E2E1").doesNotContain("Jonas");
            assertThat(plain(asked))
                    .contains("There was no photo", rules.service().urgentNumber());

            SubmissionId question = await(() -> submission("SS-E2E2"));
            assertThat(wentTo("alice.thurlestane@tarnpost.example")).isEmpty();
            personAnswers(question);
            MimeMessage answered = await(() -> wentTo("alice.thurlestane@tarnpost.example"));
            assertThat(answered.getHeader("In-Reply-To", null)).isEqualTo("<alice.thurlestane@tarnpost.example>");
            assertThat(await(() -> finished(question))).isEqualTo(OutboxState.SENT);

            SubmissionId nobody = await(() -> submission("SS-E2E3"));
            personAnswers(nobody);
            assertThat(await(() -> finished(nobody))).isEqualTo(OutboxState.REFUSED);
            assertThat(smtp.wentOut()).hasSize(2);
            assertThat(imap.marked(CrashMail.KEYWORD)).isEqualTo(3);
        } finally {
            watch.kill();
        }
    }

    private void book() throws Exception {
        String slot = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                        now.minusSeconds(1200).atZone(ZONE)) + ","
                + DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                        now.minusSeconds(300).atZone(ZONE));
        String timer = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                now.minusSeconds(900).atZone(ZONE));
        List<String> rows = new ArrayList<>();
        rows.add("ref,given_name,family_name,date_of_birth,email,clinic,slot_start,slot_end,kit,lot,timer_start");
        for (String who : List.of(
                "SS-E2E1,Jonas,Vestergren,1988-03-14,jonas.vestergren",
                "SS-E2E2,Alice,Thurlestane,1990-01-02,alice.thurlestane",
                "SS-E2E3,Unknown,Person,1991-01-02,unknown.person")) {
            rows.add(who + "@tarnpost.example,QUAY," + slot + ",SKERRY-20,SK2605A," + timer);
        }
        Path book = Files.write(folder.resolve("book.csv"), rows);
        Ran ran = Ran.command("appointments", "import", book, "--data", folder.resolve("data"));
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    private static String clock(Instant time) {
        return DateTimeFormatter.ofPattern("HH:mm").format(time.atZone(ZONE));
    }

    /** By SMTP, as the clinic's outer host hands it on: with the line and the judgement that it has added. */
    private void arrives(String name, String mailbox, String subject, String text) {
        String address = mailbox + "@tarnpost.example";
        String date = DateTimeFormatter.RFC_1123_DATE_TIME.format(ZonedDateTime.now(ZONE));
        String raw = """
                Authentication-Results: mx.skarrasound.example; dmarc=pass header.from=tarnpost.example
                Received: from out.tarnpost.example (out.tarnpost.example [198.51.100.20])
                \tby mx.skarrasound.example with ESMTPS id 22fa41ad; %1$s
                From: %2$s <%3$s>
                To: <intake@skarrasound.example>
                Subject: %2$s, %4$s
                Date: %1$s
                Message-ID: <%3$s>

                %5$s
                """.formatted(date, name, address, subject, text).replace("\n", "\r\n");
        SmtpSender out =
                new SmtpSender(new Server("127.0.0.1", smtp.port(), TlsMode.PLAIN, Optional.empty()), Optional.empty());
        assertThat(out.send(new OutgoingMail(
                        address, List.of("intake@skarrasound.example"), raw.getBytes(StandardCharsets.UTF_8))))
                .isInstanceOf(SendResult.Accepted.class);
    }

    private void personAnswers(SubmissionId id) throws Exception {
        try (Desk desk = desk()) {
            Replying.Draft draft = desk.replying().draft(id, Optional.empty()).orElseThrow();
            assertThat(desk.replying().send(OPERATOR, draft.ticket(), Replying.Edited.asIs(draft)))
                    .isInstanceOf(ActionResult.Done.class);
        }
    }

    private Optional<SubmissionId> submission(String ref) throws Exception {
        try (Desk desk = desk()) {
            return desk.casebook().find(ref).stream().findFirst();
        }
    }

    private Optional<OutboxState> finished(SubmissionId id) throws Exception {
        try (Desk desk = desk()) {
            return desk.outbox().of(id).stream()
                    .filter(l -> l.finished().isPresent())
                    .map(OutboxLetter::state)
                    .findFirst();
        }
    }

    private Desk desk() throws Exception {
        return Desk.open(DeskConfig.embedded(folder.resolve("data"), rules, Clock.systemUTC()));
    }

    private Optional<MimeMessage> wentTo(String address) throws Exception {
        for (byte[] raw : smtp.wentOut()) {
            MimeMessage m = new MimeMessage(Session.getInstance(new Properties()), new ByteArrayInputStream(raw));
            if (m.getAllRecipients()[0].toString().equals(address)) {
                return Optional.of(m);
            }
        }
        return Optional.empty();
    }

    private static String plain(MimeMessage m) throws Exception {
        return String.valueOf(((MimeMultipart) m.getContent()).getBodyPart(0).getContent());
    }

    private <T> T await(Callable<Optional<T>> what) throws Exception {
        for (int tries = 0; tries < 240; tries++) {
            Optional<T> found = what.call();
            if (found.isPresent()) {
                return found.get();
            }
            Thread.sleep(500);
        }
        throw new AssertionError(
                "it never came: " + smtp.log() + imap.log() + Files.readString(folder.resolve("watch.log")));
    }

    private WatchChild watch() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret"), CrashMail.PASSWORD);
        return WatchChild.start(
                folder.resolve("watch.log"),
                "512m",
                Main.class,
                "watch",
                "--no-console",
                "--rules",
                folder.resolve("rules"),
                "--data",
                folder.resolve("data"),
                "--imap-host",
                "localhost",
                "--imap-port",
                imap.port(),
                "--imap-trust",
                imap.certificateFile(),
                "--imap-user",
                CrashMail.USER,
                "--smtp-host",
                "localhost",
                "--smtp-port",
                smtp.port(),
                "--smtp-tls",
                "starttls",
                "--smtp-trust",
                imap.certificateFile(),
                "--smtp-user",
                Exim.USER,
                "--smtp-password-file",
                secret);
    }
}
