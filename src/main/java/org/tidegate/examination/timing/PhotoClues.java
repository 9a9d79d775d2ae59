package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Event;
import org.tidegate.message.HeaderDate;
import org.tidegate.rules.TimingRules;

/**
 * When one photo was taken, as its file and the phone that sent it tell.
 *
 * <p>A phone's clock is an event of its own, {@link Event#DEVICE_ZERO}: what it showed for photo and message are exact distances from
 * it, and where it stands against true time is one more clue, {@code clock-right}. So a wrong clock cancels out by itself.
 */
final class PhotoClues {

    static final Event PHOTO = Event.photo(0);

    /**
     * The oldest fresh fix among the phones in camera-clock-vs-gps is 101 s old, the oldest of all cameras 420 s. It is a tolerance
     * already, and granted no further one.
     */
    private static final Duration FIX_AGE = Duration.ofMinutes(5);

    private static final Clock SATELLITE = new Clock(Clock.Kind.SATELLITE, "GPS");

    private final Capture capture;
    private final Optional<HeaderDate> date;
    private final Event firstHop;
    private final TimingRules rules;
    private final Wording wording;

    /** @param date the message's Date where the same phone wrote it */
    PhotoClues(Capture capture, Optional<HeaderDate> date, Event firstHop, TimingRules rules, Wording wording) {
        this.capture = capture;
        this.date = date;
        this.firstHop = firstHop;
        this.rules = rules;
        this.wording = wording;
    }

    /**
     * All clues for one zone.
     *
     * @param key those that must stand for the zone to remain possible
     */
    record InZone(List<Constraint> clues, List<Constraint> key) {}

    InZone in(ZoneCase zone) {
        List<Constraint> clues = new ArrayList<>();
        clues.add(Clues.order(PHOTO, Event.SENT));
        capture.fix().ifPresent(fix -> clues.addAll(fix(fix)));
        List<Constraint> shown = shown(zone);
        List<Constraint> clock = clock(zone);
        clues.addAll(shown);
        clues.addAll(clock);
        return new InZone(clues, date.isPresent() ? shown : clock);
    }

    private List<Constraint> fix(Instant fix) {
        String stamp = "GPS stamp of " + wording.time(fix);
        return List.of(
                satellite("the photo was taken no earlier than its " + stamp, List.of(), rules.phoneClock(), Rank.FIX)
                        .notBefore(PHOTO, fix),
                satellite(
                                "the photo's " + stamp + " was at most " + Wording.span(FIX_AGE) + " old",
                                List.of(Assumptions.FRESH_FIX),
                                Duration.ZERO,
                                Rank.FRESH_FIX)
                        .notAfter(PHOTO, fix.plus(FIX_AGE)));
    }

    private static Clues.Source satellite(String words, List<Assumption> leansOn, Duration tolerance, Rank rank) {
        return new Clues.Source(SATELLITE, "GPS time stamp", words, leansOn, tolerance, rank);
    }

    /** What the device's clock showed for the photo and, where it wrote that too, for the message. */
    private List<Constraint> shown(ZoneCase zone) {
        List<Constraint> shown = new ArrayList<>();
        capture.device().ifPresent(c -> shown.add(taken(c, zone)));
        date.ifPresent(d -> shown.add(sent(d, zone)));
        return shown;
    }

    private Constraint taken(CaptureClue clue, ZoneCase zone) {
        Instant from = clue.wall().toInstant(zone.offset().orElse(ZoneOffset.UTC));
        boolean wholeSeconds = clue.wall().equals(clue.wall().truncatedTo(ChronoUnit.SECONDS));
        Instant to = wholeSeconds ? from.plus(Journey.SECOND) : from;
        String shown = "the clock of the " + capture.phone() + " showed " + taken(clue.wall(), zone);
        String words = capture.upperOnly() ? "the file was written when " + shown : shown + " for the photo";
        return device(clue.place(), words, zone.leansOn())
                .between(
                        Event.DEVICE_ZERO,
                        PHOTO,
                        capture.upperOnly() ? Optional.empty() : Optional.of(Duration.between(Instant.EPOCH, from)),
                        Optional.of(Duration.between(Instant.EPOCH, to)));
    }

    private Constraint sent(HeaderDate date, ZoneCase zone) {
        Optional<ZoneOffset> offset = date.offset().or(date::reckonedIn).or(zone::offset);
        Duration shown = Duration.between(Instant.EPOCH, date.wall().toInstant(offset.orElse(ZoneOffset.UTC)));
        return device(
                        "Date",
                        "the clock of the same phone showed " + wording.wall(date.wall())
                                + offset.map(o -> " (" + Wording.offset(o) + ")")
                                        .orElse("") + " for the message",
                        List.of(Assumptions.SAME_PHONE))
                .between(Event.DEVICE_ZERO, Event.SENT, Optional.of(shown), Optional.of(shown.plus(Journey.SECOND)));
    }

    private Clues.Source device(String place, String words, List<Assumption> leansOn) {
        return new Clues.Source(phoneClock(), place, words, leansOn, Duration.ZERO, Rank.SAME_DEVICE);
    }

    private List<Constraint> clock(ZoneCase zone) {
        List<Constraint> clues = new ArrayList<>();
        boolean zoneCancels =
                zone.standing() == ZoneCase.Standing.FROM_DATE && zone.offset().isEmpty();
        if (capture.device().isPresent() && !zoneCancels) {
            clues.add(clockRight());
        }
        if (date.isPresent()) {
            clues.add(handedOver());
        }
        return clues;
    }

    private Constraint clockRight() {
        return new Clues.Source(
                        phoneClock(),
                        "clock of the " + capture.phone(),
                        "the clock of the " + capture.phone() + " is right",
                        List.of(Assumptions.clockRight(capture.phone())),
                        rules.phoneClock(),
                        Rank.DEVICE_CLOCK)
                .between(Event.EPOCH, Event.DEVICE_ZERO, Optional.of(Duration.ZERO), Optional.of(Duration.ZERO));
    }

    private Constraint handedOver() {
        return new Clues.Source(
                        phoneClock(),
                        "handing over",
                        "a phone hands its message over within " + Wording.span(rules.handedOver()),
                        List.of(Assumptions.HANDED_OVER),
                        Duration.ZERO,
                        Rank.DEVICE_CLOCK)
                .between(Event.SENT, firstHop, Optional.empty(), Optional.of(rules.handedOver()));
    }

    private Clock phoneClock() {
        return new Clock(Clock.Kind.PHONE, capture.phone());
    }

    private String taken(LocalDateTime wall, ZoneCase zone) {
        String reason =
                switch (zone.standing()) {
                    case WRITTEN -> "";
                    case FROM_DATE -> ", the zone of the same phone's mail";
                    case CLINIC -> ", taken for the clinic's zone";
                    case ELSEWHERE -> ", a zone in use elsewhere";
                };
        return wording.wall(wall)
                + zone.offset()
                        .map(o -> " (" + Wording.offset(o) + reason + ")")
                        .orElse("");
    }
}
