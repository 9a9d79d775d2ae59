package org.tidegate.cli;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.examination.Assessment;
import org.tidegate.examination.timing.TimeJudgement;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Findings;
import org.tidegate.finding.SubjectReading;
import org.tidegate.finding.WindowVerdict;

/** What {@code examine} says of one message: the shape of {@code shared/schemas/examine.schema.json}. */
record ExamineOutput(
        String file,
        String outcome,
        Optional<String> ref,
        Optional<Integer> attempt,
        double probability,
        Optional<String> name,
        Optional<String> testTime,
        String disposition,
        List<Held> discrepancies,
        List<Window> windows,
        Optional<PhoneClock> phoneClock,
        String rules) {

    /** Fingerprints of {@code examine} are compared within one run only, so a fixed key gives nothing away. */
    static final byte[] PICTURE_KEY = "tidegate examine".getBytes(StandardCharsets.US_ASCII);

    /** One discrepancy. */
    record Held(String code, String severity, String reason) {}

    /** One time verdict; {@code margin} is an ISO 8601 duration, positive inside. */
    record Window(
            String check,
            String verdict,
            Optional<Integer> level,
            List<String> assumptions,
            Optional<String> margin,
            List<String> derivation) {}

    /** How far a phone's clock was provably ahead; {@code least} and {@code most} are ISO 8601 durations, negative where it was behind. */
    record PhoneClock(String phone, Optional<String> least, Optional<String> most, String words) {}

    static ExamineOutput of(String file, Findings findings, Assessment a) {
        SubjectReading best = findings.readings().get(0);
        return new ExamineOutput(
                file,
                a.match().outcome().name().toLowerCase(Locale.ROOT),
                a.test().map(TestKey::ref),
                a.test().map(TestKey::attempt),
                Math.round(a.match().probability() * 1e6) / 1e6,
                best.name(),
                best.testTime().map(Object::toString),
                a.disposition().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                a.discrepancies().stream().map(ExamineOutput::held).toList(),
                a.windows().stream().map(ExamineOutput::window).toList(),
                a.time().flatMap(TimeJudgement::phoneClock).map(ExamineOutput::phoneClock),
                a.rulesHash());
    }

    private static Held held(Discrepancy d) {
        return new Held(d.code().code(), d.severity().code(), d.reason());
    }

    private static Window window(WindowVerdict w) {
        return new Window(
                w.check().name().toLowerCase(Locale.ROOT),
                w.verdict().code(),
                w.level().map(l -> l.number()),
                w.assumptions().stream().map(Assumption::toString).toList(),
                w.margin().map(Duration::toString),
                w.derivation().stream().map(WindowVerdict.DerivationStep::words).toList());
    }

    private static PhoneClock phoneClock(TimeJudgement.PhoneClockError e) {
        return new PhoneClock(
                e.phone(), e.least().map(Duration::toString), e.most().map(Duration::toString), e.words());
    }

    String json() {
        return Json.text(this);
    }
}
