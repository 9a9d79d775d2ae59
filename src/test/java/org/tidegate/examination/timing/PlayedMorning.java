package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
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

/**
 * One submission played from true times forward: clock errors, zones, delays, stripping, dishonest servers, forgery below the
 * boundary. Shares are invented, on the unkind side; {@code shaky} raises all mishaps.
 */
final class PlayedMorning {

    private static final ZoneOffset CLINIC = ZoneOffset.ofHours(1);
    private static final List<String> OFFSETS =
            List.of("+00:00", "+02:00", "-04:00", "+05:30", "-08:00", "+10:00", "+03:00");
    private static final Instant SLOT = Instant.parse("2026-05-04T06:00:00Z");

    private final Random random;
    private final double mishap;
    private final Set<String> violated = new TreeSet<>();

    private Duration phoneError = Duration.ZERO;
    private ZoneOffset zone = CLINIC;
    private boolean nativeProgram;

    /**
     * @param readAfter true minutes from test to photo
     * @param violated names of the assumptions that this play breaks
     * @param honest nothing is forged, and clock, server and habits are as supposed
     */
    record Played(
            TimeCase submission,
            double readAfter,
            double arrivedAfter,
            Set<String> violated,
            boolean timer,
            boolean nativeProgram,
            boolean exif) {

        boolean honest() {
            return violated.isEmpty();
        }
    }

    private PlayedMorning(Random random, double mishap) {
        this.random = random;
        this.mishap = mishap;
    }

    /** @param readAfter true minutes from test to photo; the rest is drawn */
    static Played play(Random random, double readAfter, double mishap) {
        return new PlayedMorning(random, mishap).play(readAfter);
    }

    private Played play(double readAfter) {
        Instant test = SLOT.plusSeconds(random.nextInt(900));
        Instant photo = test.plusMillis((long) (readAfter * 60_000));
        Instant sent = photo.plusSeconds(20 + random.nextInt(120));
        drawPhone();
        boolean timer = random.nextInt(10) < 7;
        boolean exif = random.nextInt(10) < 8;
        boolean colleague = happens(0.02);
        List<TraceHop> hops = hops(sent);
        Instant arrived = hops.get(0).time().orElseThrow().instant();
        if (colleague) {
            violated.add("same-phone");
        }
        List<DkimSignature> signatures = signatures(hops.get(1), new Random(Double.doubleToLongBits(readAfter)));
        Findings findings = findings(hops, signatures, date(sent, colleague), picture(photo, exif));
        TimeCase submission = new TimeCase(
                record(test, timer),
                Scene.RULES.protocols().get(0),
                List.of(new MessageEvidence(findings, reading(test), List.of(0), true)),
                Optional.empty(),
                List.of());
        return new Played(
                submission, readAfter, minutes(test, arrived), Set.copyOf(violated), timer, nativeProgram, exif);
    }

    private boolean happens(double share) {
        return random.nextDouble() < share * mishap;
    }

    private void drawPhone() {
        nativeProgram = random.nextInt(10) < 7;
        phoneError = Duration.ofMillis((long) (random.nextGaussian() * 15_000));
        if (happens(0.05)) {
            phoneError = Duration.ofSeconds((random.nextBoolean() ? 1 : -1) * (130L + random.nextInt(12_000)));
            violated.add("clock-right");
        }
        if (happens(0.03)) {
            zone = ZoneOffset.of(OFFSETS.get(random.nextInt(OFFSETS.size())));
            violated.add("phone-in-clinic-zone");
        }
    }

    private LocalDateTime phoneWall(Instant time) {
        return LocalDateTime.ofInstant(time.plus(phoneError), zone).truncatedTo(ChronoUnit.SECONDS);
    }

    private Optional<HeaderDate> date(Instant sent, boolean colleague) {
        if (!nativeProgram) {
            return Optional.of(new HeaderDate(
                    LocalDateTime.ofInstant(sent, ZoneOffset.UTC).truncatedTo(ChronoUnit.SECONDS),
                    Optional.of(ZoneOffset.UTC)));
        }
        return Optional.of(
                colleague
                        ? new HeaderDate(LocalDateTime.ofInstant(sent, CLINIC).withNano(0), Optional.of(CLINIC))
                        : new HeaderDate(phoneWall(sent), Optional.of(zone)));
    }

    /** Topmost first; an outgoing server may sit on the message, lie, or invent a line below. */
    private List<TraceHop> hops(Instant sent) {
        Duration queued = Duration.ofSeconds(1 + random.nextInt(25));
        if (happens(0.03)) {
            queued = Duration.ofSeconds(190 + random.nextInt(2_400));
            violated.add("handed-over-promptly");
        }
        Instant first = sent.plus(queued);
        Duration lie = Duration.ofMillis((long) (random.nextGaussian() * 3_000));
        if (happens(0.02)) {
            lie = Duration.ofSeconds((random.nextBoolean() ? 1 : -1) * (130L + random.nextInt(3_000)));
            violated.add("server-honest");
        }
        Instant second = first.plusSeconds(1 + random.nextInt(10)).plusSeconds(happens(0.03) ? 1_800 : 0);
        Instant arrived = second.plusSeconds(1 + random.nextInt(20));
        List<TraceHop> hops = new ArrayList<>();
        hops.add(hop(0, "mx.skarrasound.example", arrived));
        hops.add(hop(1, "out.fernpost.example", second));
        hops.add(hop(2, "smtp.fernpost.example", first.plus(lie)));
        if (happens(0.02)) {
            hops.add(hop(3, "mx.skarrasound.example", sent.minusSeconds(random.nextInt(4_000))));
            violated.add("server-honest");
        }
        return hops;
    }

    /** A third of the mail services sign, some with a clock that is wrong. */
    private List<DkimSignature> signatures(TraceHop outgoing, Random draw) {
        if (draw.nextInt(3) != 0) {
            return List.of();
        }
        Duration lie = Duration.ofMillis((long) (draw.nextGaussian() * 3_000));
        if (draw.nextDouble() < 0.04 * mishap) {
            lie = Duration.ofSeconds((draw.nextBoolean() ? 1 : -1) * (130L + draw.nextInt(3_000)));
            violated.add("server-honest");
        }
        Instant time = outgoing.time().orElseThrow().instant().plus(lie).truncatedTo(ChronoUnit.SECONDS);
        return List.of(new DkimSignature(
                "fernpost.example", "s1", Optional.of(time), List.of("from", "subject", "date"), true, true));
    }

    private static TraceHop hop(int position, String by, Instant time) {
        HeaderDate stamp = new HeaderDate(
                LocalDateTime.ofInstant(time, CLINIC).truncatedTo(ChronoUnit.SECONDS), Optional.of(CLINIC));
        return new TraceHop(
                position,
                Optional.empty(),
                Optional.of("198.51.100.7"),
                Optional.of(by),
                Optional.of("ESMTP"),
                Optional.of(stamp),
                by);
    }

    private PictureFinding picture(Instant photo, boolean exif) {
        List<CaptureClue> capture = new ArrayList<>();
        if (exif) {
            capture.add(new CaptureClue(
                    CaptureClue.Kind.EXIF_ORIGINAL,
                    phoneWall(photo),
                    random.nextBoolean() ? Optional.of(zone) : Optional.empty(),
                    "Exif SubIFD 0x9003 DateTimeOriginal"));
            if (random.nextInt(5) == 0) {
                capture.add(fix(photo));
            }
        }
        return new PictureFinding(
                "2",
                Optional.empty(),
                "image/jpeg",
                960,
                1280,
                PictureFinding.Kind.PHOTO,
                PictureFinding.Decoding.DECODED,
                exif ? Optional.of("Kestrel") : Optional.empty(),
                exif ? Optional.of("K5") : Optional.empty(),
                Optional.empty(),
                capture,
                Optional.empty(),
                List.of(),
                PictureFinding.DocumentFinding.notJudged(),
                Optional.empty(),
                List.of());
    }

    private CaptureClue fix(Instant photo) {
        Duration age = Duration.ofSeconds(random.nextInt(60));
        if (happens(0.1)) {
            age = Duration.ofSeconds(310 + random.nextInt(7_000));
            violated.add("fresh-fix");
        }
        LocalDateTime stamp =
                LocalDateTime.ofInstant(photo.minus(age), ZoneOffset.UTC).truncatedTo(ChronoUnit.SECONDS);
        return new CaptureClue(CaptureClue.Kind.GPS, stamp, Optional.of(ZoneOffset.UTC), "GPS time stamp");
    }

    private Optional<SubjectReading> reading(Instant test) {
        Duration error = Duration.ofSeconds(random.nextInt(120) - 60);
        if (happens(0.04)) {
            error = Duration.ofSeconds((random.nextBoolean() ? 1 : -1) * (190L + random.nextInt(2_000)));
            violated.add("stated-is-timer");
        }
        LocalDateTime wall = LocalDateTime.ofInstant(test.plus(error), CLINIC).truncatedTo(ChronoUnit.MINUTES);
        return Optional.of(new SubjectReading(
                SubjectReading.Source.SUBJECT,
                Optional.of("Ada Example"),
                Optional.of(wall),
                Optional.empty(),
                true,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                List.of(),
                List.of()));
    }

    private TestRecord record(Instant test, boolean timer) {
        Duration error = Duration.ofSeconds(random.nextInt(60) - 30);
        if (timer && happens(0.01)) {
            error = Duration.ofSeconds((random.nextBoolean() ? 1 : -1) * (70L + random.nextInt(600)));
            violated.add("timer-within-1-min");
        }
        Appointment appointment = new Appointment(
                "CS-TEST01",
                "Ada",
                "Example",
                Optional.empty(),
                Optional.empty(),
                "QUAY",
                SLOT.atOffset(CLINIC),
                SLOT.plusSeconds(900).atOffset(CLINIC),
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
                timer ? Optional.of(test.plus(error).atOffset(CLINIC)) : Optional.empty(),
                TestRecord.Observed.UNSTATED,
                Optional.empty());
    }

    private Findings findings(
            List<TraceHop> hops, List<DkimSignature> signatures, Optional<HeaderDate> date, PictureFinding picture) {
        Envelope envelope = new Envelope(
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                date,
                Optional.empty(),
                List.of(),
                hops,
                List.of(),
                signatures,
                Nature.PERSONAL,
                Optional.empty(),
                Optional.of(nativeProgram ? "Kestrel Mail 8.2 (K5; phone)" : "Brae Webmail 3.2"),
                "",
                Optional.empty());
        return new Findings(
                Findings.FORMAT,
                envelope,
                Optional.empty(),
                List.of(),
                List.of(),
                true,
                List.of(picture),
                List.of(),
                List.of());
    }

    private static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 60_000.0;
    }
}
