package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.Event;
import org.tidegate.finding.Event.Kind;
import org.tidegate.finding.Findings;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.Check;
import org.tidegate.finding.WindowVerdict.DerivationStep;

/**
 * Replays a derivation against the raw evidence, sharing no code with the solver: every step claims no more than its piece of evidence
 * gives, the steps join up, their bounds add up to the conclusion, and the conclusions prove the verdict. Fixed rules of the sample.
 */
final class DerivationChecker {

    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final TimeCase c;
    private final Findings message;

    DerivationChecker(TimeCase c) {
        this.c = c;
        this.message = c.messages().get(0).findings();
    }

    /** What is wrong with the proof; empty where it holds. */
    List<String> faults(WindowVerdict verdict) {
        List<String> faults = new ArrayList<>();
        if (verdict.verdict() == Verdict.UNDETERMINED) {
            return faults;
        }
        boolean outside = verdict.verdict() == Verdict.OUTSIDE;
        List<DerivationStep> chain = new ArrayList<>();
        List<DerivationStep> conclusions = new ArrayList<>();
        for (DerivationStep step : verdict.derivation()) {
            if (List.of("other zones", "alternative").contains(step.clue())) {
                continue;
            }
            if (step.clue().equals("conclusion")) {
                joins(chain, step, faults);
                conclusions.add(step);
                chain.clear();
            } else {
                if (!supported(step, outside)) {
                    faults.add("claims more than the evidence: " + step);
                }
                chain.add(step);
            }
        }
        if (!proves(verdict.check(), outside, conclusions)) {
            faults.add("does not prove " + verdict.verdict() + ": " + conclusions);
        }
        return faults;
    }

    private static void joins(List<DerivationStep> chain, DerivationStep conclusion, List<String> faults) {
        Event at = conclusion.from();
        Duration sum = Duration.ZERO;
        for (DerivationStep step : chain) {
            if (!step.from().equals(at)) {
                faults.add("does not join: " + step);
            }
            at = step.to();
            sum = sum.plus(step.bound());
        }
        if (!at.equals(conclusion.to()) || !sum.equals(conclusion.bound())) {
            faults.add("does not add up: " + conclusion + " but " + sum);
        }
    }

    private static boolean proves(Check check, boolean outside, List<DerivationStep> conclusions) {
        Duration most = Duration.ofDays(99_999);
        Duration least = most.negated();
        for (DerivationStep s : conclusions) {
            if (s.from().kind() == Kind.TEST) {
                most = s.bound().compareTo(most) < 0 || !outside ? s.bound() : most;
            } else {
                least = s.bound().negated();
            }
        }
        Duration opens = check == Check.PHOTO ? Duration.ofMinutes(19) : Duration.ofDays(-9_999);
        Duration closes = Duration.ofMinutes(check == Check.PHOTO ? 31 : 50);
        boolean bothWays = check == Check.SENT || least.compareTo(opens) >= 0;
        return outside
                ? least.compareTo(closes) > 0 || most.compareTo(opens) < 0
                : bothWays && most.compareTo(closes) <= 0;
    }

    /** Whether {@code to − from ≤ bound} follows from the one piece of evidence that the step names. */
    private boolean supported(DerivationStep s, boolean tolerant) {
        Kind from = s.from().kind();
        Kind to = s.to().kind();
        return switch (s.clue()) {
            case "order of events" -> !s.bound().isNegative() && rank(s.to()) < rank(s.from());
            case "handing over" -> from == Kind.SENT && s.bound().compareTo(Duration.ofMinutes(3)) >= 0;
            case "book timer_start" ->
                near(s, c.test().timerStart().orElseThrow().toInstant(), MINUTE, tolerant, 5);
            case "book slot_start, slot_end" -> slot(s, tolerant);
            case "stated test time" -> stated(s);
            case "Date" -> reads(s, message.envelope().date().orElseThrow().wall());
            case "GPS time stamp" -> gps(s, tolerant);
            default -> other(s, tolerant);
        };
    }

    private boolean other(DerivationStep s, boolean tolerant) {
        if (s.clue().startsWith("Received line ")) {
            int line = Integer.parseInt(s.clue().substring(14)) - 1;
            Instant time =
                    message.envelope().hops().get(line).time().orElseThrow().instant();
            boolean ours = s.from().kind() == Kind.ARRIVED || s.to().kind() == Kind.ARRIVED;
            return near(s, time, Duration.ZERO, tolerant, ours ? 5 : 120);
        }
        if (s.clue().startsWith("DKIM-Signature of ")) {
            return message.envelope().dkim().stream()
                    .filter(k -> k.verified() && k.wholeBody() && s.clue().endsWith(" " + k.domain()))
                    .anyMatch(k -> near(s, k.time().orElseThrow(), Duration.ZERO, tolerant, 120));
        }
        if (s.clue().startsWith("clock of ")) {
            return tolerant
                    ? s.bound().compareTo(Duration.ofMinutes(2)) >= 0
                    : s.bound().compareTo(Duration.ZERO) >= 0;
        }
        return message.pictures().get(0).capture().stream()
                .filter(k -> k.place().equals(s.clue()))
                .anyMatch(k -> reads(s, k.wall()));
    }

    /** A device's display, in whatever zone: the step differs from it by a whole quarter of an hour, and a second at most. */
    private static boolean reads(DerivationStep s, LocalDateTime wall) {
        Duration shown = Duration.between(Instant.EPOCH, wall.toInstant(ZoneOffset.UTC));
        Duration claimed =
                s.from().kind() == Kind.DEVICE_ZERO ? s.bound() : s.bound().negated();
        long rest = Math.floorMod(claimed.minus(shown).toMillis(), 900_000);
        return rest <= 999;
    }

    private static boolean near(DerivationStep s, Instant time, Duration within, boolean tolerant, int tolerance) {
        Duration slack = within.plusSeconds(tolerant ? tolerance : 0);
        Duration since = Duration.between(Instant.EPOCH, time);
        return s.from().kind() == Kind.EPOCH
                ? s.bound().compareTo(since.plus(slack)) >= 0
                : s.bound().compareTo(since.minus(slack).negated()) >= 0;
    }

    private boolean slot(DerivationStep s, boolean tolerant) {
        OffsetDateTime edge = s.from().kind() == Kind.EPOCH
                ? c.test().appointment().slotEnd().plusMinutes(10)
                : c.test().appointment().slotStart().minusMinutes(5);
        return near(s, edge.toInstant(), Duration.ZERO, tolerant, 5);
    }

    private boolean stated(DerivationStep s) {
        LocalDateTime wall =
                c.messages().get(0).reading().orElseThrow().testTime().orElseThrow();
        Duration two = Duration.ofMinutes(2);
        return IntStream.rangeClosed(-48, 56)
                .anyMatch(
                        q -> near(s, wall.toInstant(ZoneOffset.UTC).minus(Duration.ofMinutes(15L * q)), two, false, 0));
    }

    private boolean gps(DerivationStep s, boolean tolerant) {
        Instant fix = message.pictures().get(0).capture().stream()
                .filter(k -> k.kind() == CaptureClue.Kind.GPS)
                .findFirst()
                .orElseThrow()
                .wall()
                .toInstant(ZoneOffset.UTC);
        return s.from().kind() == Kind.EPOCH
                ? near(s, fix, Duration.ofMinutes(5), false, 0)
                : near(s, fix, Duration.ZERO, tolerant, 120);
    }

    private static int rank(Event event) {
        return switch (event.kind()) {
            case PHOTO -> 1;
            case SENT -> 2;
            case SIGNED -> 500;
            case HOP -> 3 + event.index();
            case ARRIVED -> 1_000;
            default -> 9_999;
        };
    }
}
