package org.tidegate.examination.timing;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.Appointment;
import org.tidegate.booking.TestRecord;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.Findings;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.SubjectReading;
import org.tidegate.message.DkimSignature;
import org.tidegate.message.Envelope;
import org.tidegate.message.HeaderDate;
import org.tidegate.message.Nature;
import org.tidegate.message.TraceHop;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;

/** One submission on 4 May 2026, told clue by clue. Walls are written {@code 07:28:05}, instants {@code 07:28:05+01:00}; of other days with their date. */
final class Scene {

    static final Rules RULES = ((RulesResult.Loaded) RulesReader.read(Path.of("rules"))).rules();

    private static final String DAY = "2026-05-04T";

    private Optional<OffsetDateTime> timer = Optional.empty();
    private OffsetDateTime slot = OffsetDateTime.parse(dated("07:00:00+01:00"));
    private Optional<String> program = Optional.empty();
    private Optional<HeaderDate> date = Optional.empty();
    private Optional<LocalDateTime> stated = Optional.empty();
    private final List<TraceHop> hops = new ArrayList<>();
    private final List<PictureFinding> pictures = new ArrayList<>();
    private final List<MessageEvidence> earlier = new ArrayList<>();
    private final List<Outage> outages = new ArrayList<>();
    private boolean cassette = true;
    private Optional<LocalTime> onCassette = Optional.empty();
    private final List<DkimSignature> signatures = new ArrayList<>();

    /** A time without a date is of 4 May 2026. */
    private static String dated(String time) {
        return time.contains("T") ? time : DAY + time;
    }

    static Scene slot(String start) {
        Scene scene = new Scene();
        scene.slot = OffsetDateTime.parse(dated(start));
        return scene;
    }

    static Scene timer(String start) {
        Scene scene = new Scene();
        OffsetDateTime timer = OffsetDateTime.parse(dated(start));
        scene.slot = timer.truncatedTo(ChronoUnit.HOURS);
        scene.timer = Optional.of(timer);
        return scene;
    }

    Scene stated(String wall) {
        stated = Optional.of(LocalDateTime.parse(dated(wall)));
        return this;
    }

    Scene program(String name) {
        program = Optional.of(name);
        return this;
    }

    Scene date(String wall, String offset) {
        Optional<ZoneOffset> zone = offset.isEmpty() ? Optional.empty() : Optional.of(ZoneOffset.of(offset));
        date = Optional.of(new HeaderDate(LocalDateTime.parse(dated(wall)), zone));
        return this;
    }

    /** A Date of {@code -0000}. */
    Scene dateInUnknownZone(String utc) {
        date = Optional.of(
                new HeaderDate(LocalDateTime.parse(dated(utc)), Optional.empty(), Optional.of(ZoneOffset.UTC)));
        return this;
    }

    /** A Received line; the first one told is the topmost. */
    Scene received(String by, String peer, String time) {
        OffsetDateTime t = OffsetDateTime.parse(dated(time));
        return received(by, peer, new HeaderDate(t.toLocalDateTime(), Optional.of(t.getOffset())));
    }

    Scene receivedWithoutZone(String by, String wall) {
        return received(by, "198.51.100.83", new HeaderDate(LocalDateTime.parse(dated(wall)), Optional.empty()));
    }

    private Scene received(String by, String peer, HeaderDate stamp) {
        hops.add(new TraceHop(
                hops.size(),
                Optional.empty(),
                Optional.of(peer),
                Optional.of(by),
                Optional.of("ESMTP"),
                Optional.of(stamp),
                by));
        return this;
    }

    Scene arrived(String time) {
        return received("mx.skarrasound.example", "198.51.100.83", time);
    }

    Scene photo(String make, String model, CaptureClue... capture) {
        return picture(PictureFinding.Kind.PHOTO, make, model, capture);
    }

    Scene picture(PictureFinding.Kind kind, String make, String model, CaptureClue... capture) {
        pictures.add(new PictureFinding(
                "2",
                Optional.empty(),
                "image/jpeg",
                960,
                1280,
                kind,
                PictureFinding.Decoding.DECODED,
                make.isEmpty() ? Optional.empty() : Optional.of(make),
                model.isEmpty() ? Optional.empty() : Optional.of(model),
                Optional.empty(),
                List.of(capture),
                Optional.empty(),
                List.of(),
                PictureFinding.DocumentFinding.notJudged(),
                Optional.empty(),
                List.of()));
        return this;
    }

    /** A sound DKIM signature. */
    Scene signed(String domain, String time) {
        return signed(domain, time, true, true, "from", "subject", "date");
    }

    Scene signed(String domain, String time, boolean wholeBody, boolean verified, String... headers) {
        signatures.add(new DkimSignature(
                domain,
                "s1",
                Optional.of(OffsetDateTime.parse(dated(time)).toInstant()),
                List.of(headers),
                wholeBody,
                verified));
        return this;
    }

    Scene onCassette(String time) {
        onCassette = Optional.of(LocalTime.parse(time));
        return this;
    }

    Scene supplementOnly() {
        cassette = false;
        return this;
    }

    Scene outage(String from, String to) {
        outages.add(new Outage(
                OffsetDateTime.parse(dated(from)).toInstant(),
                OffsetDateTime.parse(dated(to)).toInstant()));
        return this;
    }

    /** Closes this message; what follows tells the next one of the same submission. */
    Scene then() {
        earlier.add(message());
        hops.clear();
        signatures.clear();
        pictures.clear();
        date = Optional.empty();
        program = Optional.empty();
        cassette = true;
        return this;
    }

    static CaptureClue exif(String wall) {
        return clue(CaptureClue.Kind.EXIF_ORIGINAL, wall, Optional.empty());
    }

    static CaptureClue exif(String wall, String offset) {
        return clue(CaptureClue.Kind.EXIF_ORIGINAL, wall, Optional.of(ZoneOffset.of(offset)));
    }

    static CaptureClue gps(String utc) {
        return clue(CaptureClue.Kind.GPS, utc, Optional.of(ZoneOffset.UTC));
    }

    static CaptureClue fileName(String wall) {
        return clue(CaptureClue.Kind.FILE_NAME, wall, Optional.empty());
    }

    private static CaptureClue clue(CaptureClue.Kind kind, String wall, Optional<ZoneOffset> offset) {
        return new CaptureClue(kind, LocalDateTime.parse(dated(wall)), offset, kind.name());
    }

    TimeJudgement judge() {
        return new TimeJudge(RULES.timing()).judge(build());
    }

    TimeCase build() {
        List<MessageEvidence> messages = new ArrayList<>(earlier);
        messages.add(message());
        return new TimeCase(test(), RULES.protocols().get(0), messages, onCassette, outages);
    }

    private TestRecord test() {
        Appointment appointment = new Appointment(
                "CS-TEST01",
                "Ada",
                "Example",
                Optional.empty(),
                Optional.empty(),
                "QUAY",
                slot,
                slot.plusMinutes(15),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new TestRecord(
                appointment,
                1,
                "SKERRY-20",
                Optional.empty(),
                Optional.empty(),
                timer,
                TestRecord.Observed.UNSTATED,
                Optional.empty());
    }

    private MessageEvidence message() {
        Envelope envelope = new Envelope(
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                date,
                Optional.empty(),
                List.of(),
                List.copyOf(hops),
                List.of(),
                List.copyOf(signatures),
                Nature.PERSONAL,
                Optional.empty(),
                program,
                "",
                Optional.empty());
        Findings findings = new Findings(
                Findings.FORMAT,
                envelope,
                Optional.<Instant>empty(),
                List.of(),
                List.of(),
                true,
                List.copyOf(pictures),
                List.of(),
                List.of());
        List<Integer> photos = new ArrayList<>();
        for (int i = 0; cassette && i < pictures.size(); i++) {
            photos.add(i);
        }
        return new MessageEvidence(findings, reading(), photos, cassette);
    }

    private Optional<SubjectReading> reading() {
        return stated.map(wall -> new SubjectReading(
                SubjectReading.Source.SUBJECT,
                Optional.empty(),
                Optional.of(wall),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                List.of(),
                List.of()));
    }
}
