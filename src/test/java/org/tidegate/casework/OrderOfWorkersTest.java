package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.booking.Appointment;
import org.tidegate.booking.AppointmentBook;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.Inspected;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.mailbox.Intake.Receipt;
import org.tidegate.mailbox.Sighting;
import org.tidegate.rules.Rules;
import org.tidegate.store.StoredAssessment;
import org.tidegate.work.MessageId;
import org.tidegate.work.Role;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** Whoever finishes first, the verdicts are the same; what was taken is kept byte for byte. */
class OrderOfWorkersTest {

    private static final Instant MORNING = Instant.parse("2026-05-04T06:30:00Z");
    private static final Rules RULES = Rules.bundled();

    @TempDir
    Path folder;

    private static TestRecord test(int n, String given, String family) {
        OffsetDateTime slot = OffsetDateTime.parse("2026-05-04T07:00:00+01:00").plusMinutes(10L * n);
        Appointment appointment = new Appointment(
                "SK-" + n,
                given,
                family,
                Optional.empty(),
                Optional.of(given.toLowerCase(Locale.ROOT) + "@crew.example"),
                "QUAY",
                slot,
                slot.plusMinutes(10),
                Optional.of("en"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new TestRecord(
                appointment,
                1,
                "SKERRY-20",
                Optional.of("L1"),
                Optional.empty(),
                Optional.of(slot.plusMinutes(2)),
                TestRecord.Observed.YES,
                Optional.empty());
    }

    private static final AppointmentBook BOOK = new AppointmentBook(
            List.of(test(0, "Runa", "Halvorsen"), test(1, "Petra", "Lindqvist"), test(2, "Tomasz", "Zielinski")));

    private static byte[] mail(int n, String from, String subject, String extra, String text) {
        return ("Received: from out.crew.example (out.crew.example [203.0.113.9])\r\n\tby mx.skarrasound.example;"
                        + " Mon, 4 May 2026 07:" + (30 + n) + ":00 +0100\r\nFrom: " + from + "@crew.example\r\n"
                        + "To: intake@skarrasound.example\r\nMessage-ID: <m" + n + "@crew.example>\r\n" + extra
                        + "Date: Mon, 4 May 2026 07:" + (30 + n) + ":00 +0100\r\nSubject: " + subject + "\r\n\r\n"
                        + text + "\r\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Threads across tests, supplements without a name, strangers, and what is no submission at all. */
    private static final List<byte[]> MAILS = List.of(
            mail(0, "runa", "Runa Halvorsen 07:02 QUAY", "", "photo follows"),
            mail(1, "petra", "Petra Lindqvist 07:12 QUAY", "", ""),
            mail(2, "runa", "Re: my test 07:02", "In-Reply-To: <m0@crew.example>\r\n", "here"),
            mail(3, "tomasz", "test 07:22", "", ""),
            mail(4, "tomasz", "Tomasz Zielinski 07:22 QUAY", "In-Reply-To: <m3@crew.example>\r\n", ""),
            mail(5, "petra", "07:12 again", "References: <m1@crew.example> <m0@crew.example>\r\n", ""),
            mail(6, "bot", "Out of office", "Auto-Submitted: auto-replied\r\n", "away"),
            mail(7, "runa", "Runa Halvorsen 07:02 QUAY", "", "once more"),
            mail(8, "stranger", "Nobody Known 07:45", "In-Reply-To: <m4@crew.example>\r\n", ""));

    @Test
    void finalVerdictsDoNotDependOnWhoFinishesFirst() throws IOException {
        int rounds = Math.max(6, (int) (60 * Double.parseDouble(System.getProperty("simulation.share", "0.1"))));
        List<String> inOrder = verdicts(MAILS.size(), new Random(0), false, "in-order");
        assertThat(inOrder).isNotEmpty();
        for (int seed = 1; seed <= rounds; seed++) {
            assertThat(verdicts(MAILS.size(), new Random(seed), true, "seed-" + seed))
                    .as("seed %d", seed)
                    .isEqualTo(inOrder);
        }
    }

    /** Work is drawn by due; putting some inspections off by failing them once or twice shuffles who finishes when. */
    private List<String> verdicts(int count, Random random, boolean shuffled, String name) throws IOException {
        AtomicReference<Instant> now = new AtomicReference<>(MORNING.plusSeconds(3600));
        List<Integer> failures = new ArrayList<>(Collections.nCopies(count, 0));
        if (shuffled) {
            failures.replaceAll(f -> random.nextInt(4));
        }
        Inspection real = Inspection.by(RULES);
        Inspection failing = (raw, facts) -> inspect(real, raw, facts, failures);
        DeskConfig config = DeskConfig.embedded(folder.resolve(name), RULES, new Ticking(now))
                .withInspection(failing);
        try (Desk desk = Desk.open(config)) {
            desk.books().replace(BOOK, new UserId("ada"));
            for (byte[] mail : MAILS) {
                desk.intake().take(mail, Optional.empty());
            }
            for (int i = 0; i < 6; i++) {
                desk.worker().drain();
                now.updateAndGet(t -> t.plus(Duration.ofMinutes(30)));
            }
            assertThat(desk.store().<Long>read(tx -> tx.work().waiting()))
                    .as(name)
                    .isZero();
            Kept.ledger(desk.store());
            return standing(desk);
        }
    }

    private static Inspected inspect(Inspection real, byte[] raw, DeliveryFacts facts, List<Integer> failures) {
        int which = indexOf(raw);
        if (failures.get(which) > 0) {
            failures.set(which, failures.get(which) - 1);
            throw new IllegalStateException("not now");
        }
        return real.inspect(raw, facts);
    }

    private static int indexOf(byte[] raw) {
        for (int i = 0; i < MAILS.size(); i++) {
            if (Arrays.equals(MAILS.get(i), raw)) {
                return i;
            }
        }
        throw new IllegalStateException("a message came back changed");
    }

    private static List<String> standing(Desk desk) {
        return desk.store().read(tx -> {
            List<String> lines = new ArrayList<>();
            for (Submission s : tx.submissions().all()) {
                StoredAssessment a = tx.assessments().newest(s.id()).orElseThrow();
                lines.add(s.id() + " " + s.state() + " " + s.messages() + " " + s.test() + " " + s.due() + " "
                        + a.content());
            }
            return lines;
        });
    }

    @Test
    void theFirstMorningIsJoinedAndSorted() throws IOException {
        List<String> lines = verdicts(MAILS.size(), new Random(0), false, "joined");
        assertThat(lines)
                .anySatisfy(l -> assertThat(l)
                        .startsWith("S-1 HELD")
                        .contains("Optional[SK-0]")
                        .contains("value=3"));
        assertThat(lines).anySatisfy(l -> assertThat(l).contains("ASIDE"));
    }

    @Test
    void identicalBytesAreOneMessageAndEachSightingIsRecorded() throws IOException {
        try (Desk desk = Desk.open(DeskConfig.embedded(folder, RULES, Clock.fixed(MORNING, ZoneOffset.UTC)))) {
            byte[] raw = MAILS.get(0);
            Sighting first = new Sighting("acc", "INBOX", 1, 7, Optional.empty());
            Sighting afterReset = new Sighting("acc", "INBOX", 2, 1, Optional.empty());
            assertThat(desk.intake().take(first, raw)).isEqualTo(Receipt.NEW);
            assertThat(desk.intake().take(first, raw)).isEqualTo(Receipt.KNOWN);
            assertThat(desk.intake().take(afterReset, raw)).isEqualTo(Receipt.KNOWN);
            MessageId id = new MessageId(1);
            assertThat(desk.store().<Long>read(tx -> tx.messages().sightings(id)))
                    .isEqualTo(2);
            assertThat(desk.vault()
                            .raw(desk.store().read(tx -> tx.messages().find(id)).orElseThrow()))
                    .hasValueSatisfying(kept -> assertThat(kept).isEqualTo(raw));
        }
    }

    @Test
    void aForgottenMessageIsGoneAndTheLedgerStaysWhole() throws IOException {
        try (Desk desk = Desk.open(DeskConfig.embedded(folder, RULES, Clock.fixed(MORNING, ZoneOffset.UTC)))) {
            MessageId id = desk.intake().take(MAILS.get(0), Optional.empty()).id();
            desk.worker().drain();
            User officer = new User(new UserId("dora"), "dora", Set.of(Role.DATA_PROTECTION_OFFICER), "", true);
            assertThat(desk.retaining().forget(officer, new SubmissionId(id.value()), Retaining.Why.ASKED_FOR))
                    .isInstanceOf(Retaining.Outcome.Done.class);
            assertThat(desk.vault()
                            .raw(desk.store().read(tx -> tx.messages().find(id)).orElseThrow()))
                    .isEmpty();
            assertThat(desk.intake().take(MAILS.get(0), Optional.empty()).receipt())
                    .isEqualTo(Receipt.KNOWN);
            Kept.ledger(desk.store());
        }
    }

    @Test
    void theQueueShowsHoldsAndASuggestedReplyWithClockTimes() throws IOException {
        Clock clock = Clock.fixed(Instant.parse("2026-05-04T06:31:00Z"), ZoneOffset.UTC);
        try (Desk desk = Desk.open(DeskConfig.embedded(folder, RULES, clock))) {
            desk.books().replace(BOOK, new UserId("ada"));
            desk.intake().take(MAILS.get(0), Optional.empty());
            desk.worker().drain();
            QueueRow row = desk.casebook().queue(clock.instant()).get(0);
            assertThat(row.who()).isEqualTo("Runa Halvorsen");
            assertThat(row.holds()).anySatisfy(d -> assertThat(d.code()).isEqualTo(DiscrepancyCode.NO_PHOTO));
            SubmissionView view =
                    desk.casebook().submission(row.id(), clock.instant()).orElseThrow();
            assertThat(view.reply()).hasValueSatisfying(r -> {
                assertThat(r.to()).contains("runa@crew.example");
                assertThat(r.text()).contains("07:22").contains("07:32").contains("07:52");
                assertThat(r.subject()).doesNotContain("Runa");
                assertThat(r.notAfter()).contains(Instant.parse("2026-05-04T06:52:00Z"));
            });
        }
    }

    /** A clock that the test moves. */
    private static final class Ticking extends Clock {
        private final AtomicReference<Instant> now;

        Ticking(AtomicReference<Instant> now) {
            this.now = now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now.get();
        }
    }
}
