package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.Message;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.casework.Kept;
import org.tidegate.casework.QueueRow;
import org.tidegate.mailbox.Server;
import org.tidegate.mailbox.SmtpSender;
import org.tidegate.mailbox.TlsMode;
import org.tidegate.report.Handover;
import org.tidegate.report.HandoverCsv;
import org.tidegate.report.HandoverMail;
import org.tidegate.report.HandoverText;
import org.tidegate.report.Handovers;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesFolder;
import org.tidegate.work.UserId;

/**
 * A night passes: mail comes in from a real IMAP server, nobody is there, letters go out through a real SMTP server, and in the
 * "morning", at 13:00 by the hours of this test, the handover is there. The messages are those of the sample's morning.
 */
class NightTest {

    private static final List<String> MESSAGES = List.of(
            "01-", "03-", "10-", "12-", "20-", "22-", "23-", "24-", "27-", "28-", "32-", "33-", "40-", "44-", "49-");

    private static final Instant EVENING = Instant.parse("2026-05-03T20:00:00Z");
    private static final Instant SHIFT = Instant.parse("2026-05-04T12:00:00Z");
    private static final Path GOLDEN = Path.of("src/test/resources/org/tidegate/report/night.txt");

    @TempDir
    static Path folder;

    private static final GreenMail smtp = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private static final Map<String, List<String>> received = new TreeMap<>();
    private static Rules rules;
    private static Desk desk;

    @BeforeAll
    static void night() throws Exception {
        smtp.start();
        rules = RulesFolder.night(folder.resolve("rules"));
        StageClock clock = new StageClock(EVENING);
        desk = Desk.open(DeskConfig.embedded(folder.resolve("data"), rules, clock));
        desk.books().replace(SampleMorning.book(), UserId.DAEMON);
        SmtpSender out = new SmtpSender(
                new Server("127.0.0.1", smtp.getSmtp().getPort(), TlsMode.PLAIN, Optional.empty()), Optional.empty());
        HandoverMail handover = HandoverMail.of(desk, rules, clock);
        try (DemoMail mail = new DemoMail();
                Daemon daemon = new Daemon(desk, mail.account(), e -> {})) {
            for (SampleMorning.Mail m : SampleMorning.messages()) {
                if (MESSAGES.contains(m.file().substring(0, 3))) {
                    clock.put(m.arrived());
                    mail.deliver(m.raw());
                    daemon.take();
                    daemon.examine();
                    daemon.answer(out, handover);
                    clock.put(m.arrived().plusSeconds(40));
                    daemon.answer(out, handover);
                }
            }
            for (Instant t = Instant.parse("2026-05-04T10:00:00Z"); !t.isAfter(SHIFT); t = t.plusSeconds(1800)) {
                clock.put(t);
                daemon.answer(out, handover);
            }
            clock.put(SHIFT.plusSeconds(3600));
            daemon.answer(out, handover);
        }
        for (MimeMessage m : smtp.getReceivedMessages()) {
            received.computeIfAbsent(m.getRecipients(Message.RecipientType.TO)[0].toString(), k -> new ArrayList<>())
                    .add(plain(m));
        }
    }

    @AfterAll
    static void close() {
        desk.close();
        smtp.stop();
    }

    @Test
    void theHandoverIsRight() throws Exception {
        Handover handover = new Handovers(desk.store(), desk.casebook(), rules).lastNight(SHIFT);
        String text = new HandoverText(rules).write(handover);
        if (!Files.exists(GOLDEN) || !Files.readString(GOLDEN).equals(text)) {
            Path candidate = Path.of("target/candidates").resolve(GOLDEN);
            Files.createDirectories(candidate.getParent());
            Files.writeString(candidate, text);
        }
        assertThat(GOLDEN).as("look at target/candidates, then copy").hasContent(text);
    }

    @Test
    void theShiftGetsItByMailOnceAsItBegins() {
        assertThat(received.get("shift@skarrasound.example"))
                .singleElement()
                .satisfies(text -> assertThat(text)
                        .contains("Handover, Skarra Sound Crew Health", "/handover", "does not diagnose")
                        .doesNotContain("Tollisker", "Kinlochan", "tarnpost"));
    }

    @Test
    void theWorriedPersonWakesTheOnCallPersonStandsFirstAndIsAskedForNothing() {
        assertThat(received.get("on-call@skarrasound.example"))
                .hasSizeGreaterThan(1)
                .allSatisfy(
                        text -> assertThat(text).contains("needs a person now").doesNotContain("Kinlochan"));
        List<QueueRow> queue = desk.casebook().queue(SHIFT);
        assertThat(queue.get(0).who()).isEqualTo("Rory Kinlochan");
        assertThat(received).doesNotContainKey("rory.kinlochan@tarnpost.example");
    }

    @Test
    void eachParticipantIsWrittenToOnceAndMachinesNever() {
        Map<String, List<String>> participants = new TreeMap<>(received);
        participants.keySet().removeIf(to -> to.endsWith("@skarrasound.example"));
        assertThat(participants.keySet())
                .containsExactlyInAnyOrder(
                        "maren.tollisker@tarnpost.example",
                        "ivonne.castresana@tarnpost.example",
                        "erlend.skjoldmo@tarnpost.example",
                        "lukasz.grabinski@tarnpost.example",
                        "tariq.mahfoudi@tarnpost.example",
                        "jonas.vestergren@tarnpost.example",
                        "mohan.veerapally@tarnpost.example");
        participants.forEach((to, letters) -> assertThat(letters).as(to).hasSize(1));
    }

    @Test
    void theCsvTellsTheSame() throws Exception {
        Handover handover = new Handovers(desk.store(), desk.casebook(), rules).lastNight(SHIFT);
        String csv = new HandoverCsv(rules).write(handover);
        try (CSVParser rows = CSVParser.parse(
                csv,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            List<CSVRecord> all = rows.getRecords();
            assertThat(all)
                    .hasSize(handover.cases().size()
                            + handover.acts().size()
                            + handover.calls().size());
            assertThat(all.get(0).get("what")).isEqualTo("urgent");
            assertThat(all).allSatisfy(r -> assertThat(r.get("submission")).startsWith("S-"));
        }
    }

    @Test
    void theLedgerStaysWhole() {
        Kept.examined(desk);
        assertThat(desk.store().<Long>read(tx -> tx.ledger().size())).isGreaterThan(50);
    }

    private static String plain(MimeMessage m) throws Exception {
        return String.valueOf(((MimeMultipart) m.getContent()).getBodyPart(0).getContent());
    }
}
