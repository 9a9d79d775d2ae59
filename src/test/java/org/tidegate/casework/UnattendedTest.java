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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.casework.Replying.Draft;
import org.tidegate.casework.Replying.Edited;
import org.tidegate.mailbox.OutgoingMail;
import org.tidegate.mailbox.SendResult;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.PolicyAct;
import org.tidegate.work.PolicyAct.Act;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.UserId;

/** What goes out by itself, on messages of the sample morning, through a real store. */
class UnattendedTest {

    private static final Duration DELAY = Duration.ofSeconds(30);

    @TempDir
    Path folder;

    private SampleDesk sample;
    private Desk desk;
    private Unattended unattended;
    private final List<OutgoingMail> sent = new ArrayList<>();

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder, Instant.parse("2026-05-04T05:00:00Z"));
        desk = sample.desk();
        unattended = desk.unattended();
    }

    @AfterEach
    void close() {
        sample.close();
    }

    @ParameterizedTest(name = "{0} → {1} {2}")
    @CsvSource(delimiter = ';', textBlock = """
            01-perfect.eml;            acknowledged; -
            02-stated-only.eml;        acknowledged; -
            10-read-early.eml;         asked;        read-early
            12-sent-late.eml;          acknowledged; judged
            24-worried.eml;            left;         needs-a-person free-text
            23-question.eml;           left;         needs-a-person free-text
            26-no-appointment.eml;     left;         no-address
            28-dmarc-fail.eml;         left;         needs-a-person not-authenticated
            40-no-photo.eml;           asked;        no-photo
            41-no-cassette.eml;        asked;        no-cassette
            42-blurred.eml;            asked;        photo-unreadable
            44-no-id.eml;              asked;        no-id
            49-program.eml;            left;         needs-a-person
            54-unrelated-picture.eml;  asked;        no-cassette no-id
            """)
    void doesWhatTheStoryNeeds(String file, String act, String codes) {
        SubmissionId id = sample.arrives(file);
        PolicyAct done = unattended.work().get(0);
        assertThat(done.act().code() + " " + String.join(" ", done.codes()))
                .isEqualTo(act + " " + (codes.equals("-") ? "" : codes));
        assertThat(done.submission()).isEqualTo(id);
        assertThat(desk.outbox().of(id)).hasSize(done.act() == Act.LEFT ? 0 : 1);
        assertThat(sample.now(id).state() == SubmissionState.WAITING).isEqualTo(done.act() == Act.ASKED);
        assertThat(unattended.work()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"20-out-of-office.eml", "21-bounce.eml", "22-newsletter.eml"})
    void neverAnswersAMachine(String file) {
        sample.arrives(file);
        assertThat(unattended.work()).isEmpty();
    }

    @Test
    void asksTheBookedAddressAfterTheDelayAndSaysSoInTheLedger() {
        SubmissionId id = sample.arrives("44-no-id.eml");
        PolicyAct act = unattended.work().get(0);
        assertThat(send()).isEmpty();
        sample.pass(DELAY);
        assertThat(send()).containsExactly(OutboxState.SENT);
        assertThat(sent).singleElement().satisfies(m -> {
            assertThat(m.recipients()).containsExactly("mohan.veerapally@tarnpost.example");
            assertThat(text(m)).contains("Auto-Submitted: auto-replied").contains("trained person decides");
        });
        OutboxLetter letter = desk.outbox().of(id).get(0);
        assertThat(letter.who()).isEqualTo(UserId.POLICY);
        assertThat(letter.kind()).isEqualTo(LetterKind.REQUEST);
        assertThat(ledger())
                .anySatisfy(leaf -> assertThat(leaf)
                        .contains("policy-asked", "\"policy\"", "no-id", act.rules(), "\"submission\":\"" + id + "\""));
    }

    @Test
    void acknowledgesOnceHoweverOftenItIsAssessed() {
        SubmissionId id = sample.arrives("01-perfect.eml");
        unattended.work();
        desk.registers()
                .outage(
                        SampleDesk.READER,
                        sample.now().minusSeconds(90_000),
                        sample.now().minusSeconds(80_000),
                        "cable");
        desk.registers().quarantine(SampleDesk.READER, "SK2605A", "recalled by its maker");
        desk.worker().drain();
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.HELD);
        assertThat(unattended.work())
                .singleElement()
                .satisfies(a -> assertThat(a.codes()).containsExactly("judged", "answered-before"));
        assertThat(desk.outbox().of(id)).hasSize(1);
    }

    @Test
    void isOvertakenByWhatComesInBeforeItGoes() {
        SubmissionId id = sample.arrives("32-missing-id-first.eml");
        unattended.work();
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.WAITING);
        sample.take("33-missing-id-second.eml");
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.TO_READ);
        sample.pass(DELAY);
        assertThat(send()).containsExactly(OutboxState.RECALLED);
        assertThat(sent).isEmpty();
        assertThat(unattended.work())
                .singleElement()
                .satisfies(a -> assertThat(a.act()).isEqualTo(Act.ACKNOWLEDGED));
    }

    @Test
    void leavesAloneWhatSomebodyHasTakenUp() {
        SubmissionId id = sample.arrives("44-no-id.eml");
        desk.claiming().claim(SampleDesk.OPERATOR, id);
        assertThat(unattended.work()).isEmpty();
        sample.pass(Duration.ofMinutes(5));
        assertThat(unattended.work()).hasSize(1);
    }

    @Test
    void givesWayToAPersonsOwnLetter() {
        SubmissionId id = sample.arrives("44-no-id.eml");
        unattended.work();
        Draft draft = desk.replying().draft(id, Optional.empty()).orElseThrow();
        assertThat(desk.replying().send(SampleDesk.OPERATOR, draft.ticket(), Edited.asIs(draft)))
                .isInstanceOf(ActionResult.Done.class);
        sample.pass(DELAY);
        send();
        assertThat(sent).hasSize(1);
        assertThat(desk.outbox().of(id))
                .extracting(OutboxLetter::state)
                .containsExactly(OutboxState.RECALLED, OutboxState.SENT);
    }

    @Test
    void doesNotAskWhereTheLetterWouldComeTooLate() {
        SubmissionId id = sample.arrives("44-no-id.eml");
        sample.turnTo(sample.now(id).savable().orElseThrow().minus(DELAY));
        assertThat(unattended.work())
                .singleElement()
                .satisfies(a -> assertThat(a.codes()).containsExactly("too-late", "needs-a-person", "promise-passed"));
    }

    @Test
    void aPersonDecidesWhenNoAnswerComes() {
        SubmissionId id = sample.arrives("44-no-id.eml");
        unattended.work();
        sample.pass(DELAY);
        send();
        sample.pass(Duration.ofHours(2));
        unattended.work();
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.HELD);
        assertThat(desk.outbox().of(id)).hasSize(1);
    }

    private List<OutboxState> send() {
        Sending sending = desk.sending(mail -> {
            sent.add(mail);
            return new SendResult.Accepted();
        });
        List<OutboxState> states = new ArrayList<>();
        for (Optional<Sending.Step> s = sending.work(); s.isPresent(); s = sending.work()) {
            states.add(s.get().state());
        }
        return states;
    }

    private List<String> ledger() {
        return desk.store().read(tx -> tx.ledger().leaves(0, 10_000)).stream()
                .map(b -> new String(b, StandardCharsets.UTF_8))
                .toList();
    }

    private static String text(OutgoingMail mail) {
        return new String(mail.raw(), StandardCharsets.UTF_8);
    }
}
