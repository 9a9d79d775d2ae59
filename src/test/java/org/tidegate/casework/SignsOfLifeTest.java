package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.tidegate.mailbox.OutgoingMail;
import org.tidegate.mailbox.SendResult;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.SubmissionId;

/** A letter that may have gone, and what comes in afterwards. */
class SignsOfLifeTest {

    @TempDir
    Path folder;

    private SampleDesk sample;
    private long number;
    private final List<OutgoingMail> sent = new ArrayList<>();

    @BeforeEach
    void aLetterOfWhichNobodyCanBeSure() throws IOException {
        sample = new SampleDesk(folder, Instant.parse("2026-05-04T07:50:00Z"));
        SubmissionId id = sample.take("32-missing-id-first.eml");
        Draft draft = sample.desk().replying().draft(id, Optional.empty()).orElseThrow();
        ActionResult result = sample.desk().replying().send(SampleDesk.OPERATOR, draft.ticket(), Edited.asIs(draft));
        number = ((ActionResult.Done) result).letter().orElseThrow();
        sample.pass(Duration.ofSeconds(30));
        Sending.Step step = sample.desk()
                .sending(mail -> {
                    sent.add(mail);
                    return new SendResult.Uncertain("cut after the data");
                })
                .work()
                .orElseThrow();
        assertThat(step.state()).isEqualTo(OutboxState.UNCERTAIN);
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private OutboxLetter letter() {
        return sample.desk().outbox().find(number).orElseThrow();
    }

    @Test
    void ourOwnCopyShowsThatItWent() {
        sample.take(sent.get(0).raw());
        assertThat(letter().state()).isEqualTo(OutboxState.SENT);
        assertThat(letter().outcome()).contains("Our own copy of it came to the mailbox.");
    }

    @Test
    void anAnswerShowsThatItArrived() {
        sample.take(answer("", "<" + letter().messageId() + ">"));
        assertThat(letter().state()).isEqualTo(OutboxState.SENT);
        assertThat(letter().outcome()).contains("An answer to it came.");
    }

    /** RFC 3464: a report that it did not arrive bears its Message-ID too. */
    @Test
    void neitherABounceNorAnotherThreadShowsAnything() {
        sample.take(answer("Auto-Submitted: auto-replied\r\nReturn-Path: <>\r\n", "<" + letter().messageId() + ">"));
        sample.take(answer("", "<other." + letter().messageId() + ">"));
        assertThat(letter().state()).isEqualTo(OutboxState.UNCERTAIN);
    }

    private static byte[] answer(String more, String answered) {
        return (more + "From: Tariq <t.mahfoudi@tarnpost.example>\r\nTo: results@skarrasound.example\r\n"
                        + "Date: Mon, 4 May 2026 08:56:00 +0100\r\nSubject: Re: your letter\r\n"
                        + "In-Reply-To: " + answered + "\r\nMessage-ID: <back" + more.length() + answered.length()
                        + "@tarnpost.example>\r\n\r\nHere it is.\r\n")
                .getBytes(StandardCharsets.UTF_8);
    }
}
