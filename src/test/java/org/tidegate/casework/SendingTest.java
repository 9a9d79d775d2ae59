package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.casework.Replying.Draft;
import org.tidegate.casework.Replying.Edited;
import org.tidegate.mailbox.Outgoing;
import org.tidegate.mailbox.OutgoingMail;
import org.tidegate.mailbox.SendResult;
import org.tidegate.mailbox.Server;
import org.tidegate.mailbox.SmtpSender;
import org.tidegate.mailbox.TlsMode;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/** What becomes of a letter, by what the server answers. */
class SendingTest {

    private static final Duration DELAY = Duration.ofSeconds(30);

    @TempDir
    Path folder;

    private SampleDesk sample;
    private SubmissionId id;
    private long letter;
    private final List<OutgoingMail> sent = new ArrayList<>();

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder, Instant.parse("2026-05-04T07:50:00Z"));
        id = sample.take("32-missing-id-first.eml");
        Draft draft = sample.desk().replying().draft(id, Optional.empty()).orElseThrow();
        ActionResult result = sample.desk().replying().send(SampleDesk.OPERATOR, draft.ticket(), Edited.asIs(draft));
        letter = ((ActionResult.Done) result).letter().orElseThrow();
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private Sending answering(SendResult... answers) {
        List<SendResult> left = new ArrayList<>(List.of(answers));
        Outgoing server = mail -> {
            sent.add(mail);
            return left.remove(0);
        };
        return sample.desk().sending(server);
    }

    private OutboxLetter letter() {
        return sample.desk().outbox().find(letter).orElseThrow();
    }

    @Test
    void waitsForItsDelayAndGoesOnce() {
        Sending sending = answering(new SendResult.Accepted());
        assertThat(sending.work()).isEmpty();
        sample.pass(DELAY);
        assertThat(sending.work().orElseThrow().state()).isEqualTo(OutboxState.SENT);
        assertThat(sending.work()).isEmpty();
        assertThat(sent).hasSize(1);
        assertThat(letter().state()).isEqualTo(OutboxState.SENT);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.WAITING);
    }

    @Test
    void comesBackToTheQueueWhereItsTimeHasPassed() {
        sample.turnTo(letter().notAfter().orElseThrow());
        assertThat(answering().work().orElseThrow().state()).isEqualTo(OutboxState.TOO_LATE);
        assertThat(sent).isEmpty();
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.HELD);
    }

    @Test
    void isTriedAgainOnlyWhereItDidNotGoForCertain() {
        Sending sending = answering(new SendResult.Refused(false, "451 later"), new SendResult.Accepted());
        sample.pass(DELAY);
        assertThat(sending.work().orElseThrow().state()).isEqualTo(OutboxState.WAITING);
        assertThat(sending.work()).isEmpty();
        sample.pass(Duration.ofMinutes(2));
        assertThat(sending.work().orElseThrow().state()).isEqualTo(OutboxState.SENT);
        assertThat(sent).hasSize(2);
        assertThat(id(sent.get(0))).isEqualTo(id(sent.get(1)));
    }

    @Test
    void comesBackToTheQueueWhereTheServerRefusesIt() {
        Sending sending = answering(new SendResult.Refused(true, "550 no such mailbox"));
        sample.pass(DELAY);
        assertThat(sending.work().orElseThrow().state()).isEqualTo(OutboxState.REFUSED);
        assertThat(letter().outcome()).contains("550 no such mailbox");
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.HELD);
    }

    @Test
    void isNeverSentAgainByItselfWhereItMayHaveGone() {
        Sending sending = answering(new SendResult.Uncertain("cut after the data"));
        sample.pass(DELAY);
        assertThat(sending.work().orElseThrow().state()).isEqualTo(OutboxState.UNCERTAIN);
        sample.pass(Duration.ofDays(1));
        assertThat(sending.work()).isEmpty();
        assertThat(sample.desk().outbox().inState(OutboxState.UNCERTAIN)).hasSize(1);
        assertThat(sample.desk().outbox().resolve(SampleDesk.OPERATOR, letter, false))
                .isInstanceOf(ActionResult.Done.class);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.HELD);
    }

    @Test
    void isUncertainWhereTheProgramEndedInBetween() {
        Outgoing ending = mail -> {
            throw new IllegalStateException("the program ends here");
        };
        sample.pass(DELAY);
        assertThatThrownBy(() -> sample.desk().sending(ending).work()).hasMessage("the program ends here");
        Sending next = answering();
        assertThat(next.work()).isEmpty();
        assertThat(next.markUnfinished(Duration.ofMinutes(20))).isZero();
        assertThat(next.markUnfinished(Duration.ZERO)).isEqualTo(1);
        assertThat(letter().state()).isEqualTo(OutboxState.UNCERTAIN);
        assertThat(next.work()).isEmpty();
    }

    @Test
    void arrivesAtARealServerAsTheStandardsWant() throws Exception {
        GreenMail server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
        server.start();
        try {
            Server smtp = new Server("127.0.0.1", server.getSmtp().getPort(), TlsMode.PLAIN, Optional.empty());
            sample.pass(DELAY);
            Sending sending = sample.desk().sending(new SmtpSender(smtp, Optional.empty()));
            assertThat(sending.work().orElseThrow().state()).isEqualTo(OutboxState.SENT);
            MimeMessage mail = server.getReceivedMessages()[0];
            assertThat(mail.getHeader("Message-ID", null)).isEqualTo("<" + letter().messageId() + ">");
            assertThat(mail.getHeader("In-Reply-To", null)).isEqualTo("<32-missing-id-first@tarnpost.example>");
            assertThat(mail.getHeader("Date", null)).isEqualTo("Mon, 4 May 2026 08:50:30 +0100");
            // RFC 3834 §5
            assertThat(mail.getHeader("Auto-Submitted", null)).isEqualTo("auto-replied");
            assertThat(mail.getContentType()).startsWith("multipart/alternative");
        } finally {
            server.stop();
        }
    }

    private static String id(OutgoingMail mail) {
        return new String(mail.raw(), StandardCharsets.UTF_8)
                .lines()
                .filter(l -> l.startsWith("Message-ID:"))
                .findFirst()
                .orElseThrow();
    }
}
