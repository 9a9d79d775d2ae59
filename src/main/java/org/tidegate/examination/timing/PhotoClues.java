package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.CaptureClue.Kind;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Event;
import org.tidegate.finding.PictureFinding;
import org.tidegate.message.HeaderDate;
import org.tidegate.rules.TimingRules;

/** When one photo was taken, as its file and the phone that sent it tell. */
final class PhotoClues {

    static final Event PHOTO = Event.photo(0);

    /** From the pictures of 31 real cameras: all but the stale fixes lie within this (camera-clock-vs-gps). */
    private static final Duration FIX_AGE = Duration.ofMinutes(5);

    private static final List<Kind> BEST_FIRST =
            List.of(Kind.EXIF_ORIGINAL, Kind.XMP, Kind.FILE_NAME, Kind.EXIF_DIGITIZED, Kind.PNG_TIME);
    private static final Set<Kind> LAST_CHANGE = EnumSet.of(Kind.PNG_TIME);

    private final PictureFinding picture;
    private final Optional<HeaderDate> date;
    private final boolean samePhone;
    private final Journey journey;
    private final TimingRules rules;
    private final Wording wording;

    PhotoClues(
            PictureFinding picture, Optional<HeaderDate> date, boolean samePhone, Journey journey, TimingRules rules) {
        this.picture = picture;
        this.date = date;
        this.samePhone = samePhone;
        this.journey = journey;
        this.rules = rules;
        this.wording = new Wording(rules.zone());
    }

    /** The time that the device's own clock gave the photo. */
    Optional<CaptureClue> capture() {
        return BEST_FIRST.stream()
                .flatMap(kind -> picture.capture().stream().filter(c -> c.kind() == kind))
                .findFirst();
    }

    boolean timed() {
        return picture.kind() != PictureFinding.Kind.SCREENSHOT
                && picture.capture().stream().anyMatch(c -> c.kind() == Kind.GPS || BEST_FIRST.contains(c.kind()));
    }

    String phone() {
        String name = Stream.concat(picture.make().stream(), picture.model().stream())
                .map(String::strip)
                .reduce((make, model) -> model.startsWith(make) ? model : make + " " + model)
                .orElse("phone");
        return name.isEmpty() ? "phone" : name;
    }

    boolean samePhone() {
        return samePhone && date.isPresent();
    }

    Optional<ZoneOffset> dateOffset() {
        return date.flatMap(HeaderDate::offset);
    }

    /** Clues that need no zone: the order of things, the satellite's time. */
    List<Constraint> always() {
        List<Constraint> clues = new ArrayList<>();
        clues.add(Clues.order(PHOTO, Event.SENT, "a photo is taken before it is sent"));
        gps().ifPresent(fix -> {
            clues.add(fix("the photo is not older than its GPS stamp of " + wording.time(fix), List.of(), Rank.FIX)
                    .notBefore(PHOTO, fix));
            clues.add(fix(
                            "the GPS stamp of " + wording.time(fix) + " was taken for the photo",
                            List.of(Assumptions.FRESH_FIX),
                            Rank.FRESH_FIX)
                    .notAfter(PHOTO, fix.plus(FIX_AGE)));
        });
        return clues;
    }

    private Optional<Instant> gps() {
        return picture.capture().stream()
                .filter(c -> c.kind() == Kind.GPS)
                .findFirst()
                .map(c -> c.wall().toInstant(ZoneOffset.UTC));
    }

    private Clues.Source fix(String words, List<Assumption> leansOn, Rank rank) {
        Clock satellite = new Clock(Clock.Kind.SATELLITE, "GPS");
        return new Clues.Source(satellite, "GPS time stamp", words, leansOn, rules.phoneClock(), rank);
    }

    /** What the device's clock says where it stands in the zone {@code offset}; empty: in a zone that cancels out. */
    Optional<Constraint> captured(CaptureClue clue, Optional<ZoneOffset> offset, List<Assumption> leansOn) {
        Instant shown = clue.wall().toInstant(offset.orElse(ZoneOffset.UTC));
        boolean upperOnly = picture.kind() == PictureFinding.Kind.SCREENSHOT || LAST_CHANGE.contains(clue.kind());
        return Optional.of(new Clues.Source(
                        clock(),
                        clue.place(),
                        "the file gives " + wall(clue.wall()) + " by the clock of the " + phone() + zoned(offset),
                        leansOn,
                        Duration.ZERO,
                        Rank.SAME_DEVICE)
                .between(
                        Event.DEVICE_ZERO,
                        PHOTO,
                        upperOnly ? Optional.empty() : Optional.of(Duration.between(Instant.EPOCH, shown)),
                        Optional.of(Duration.between(Instant.EPOCH, shown.plus(resolution(clue.wall()))))));
    }

    /** What the same phone's clock showed when the message was sent. */
    Optional<Constraint> sent() {
        return date.filter(d -> samePhone)
                .map(d -> new Clues.Source(
                                clock(),
                                "Date",
                                "the message says " + wall(d.wall()) + zoned(d.offset())
                                        + " by the clock of the same phone",
                                List.of(Assumptions.SAME_PHONE),
                                Duration.ZERO,
                                Rank.SAME_DEVICE)
                        .between(
                                Event.DEVICE_ZERO,
                                Event.SENT,
                                Optional.of(Duration.between(Instant.EPOCH, d.instant())),
                                Optional.of(Duration.between(
                                        Instant.EPOCH, d.instant().plus(Journey.SECOND)))));
    }

    /** The phone's clock is right. */
    Constraint clockRight(List<Assumption> alsoLeansOn) {
        return new Clues.Source(
                        clock(),
                        "clock of the " + phone(),
                        "the clock of the " + phone() + " is right",
                        Stream.concat(Stream.of(Assumptions.clockRight(phone())), alsoLeansOn.stream())
                                .toList(),
                        rules.phoneClock(),
                        Rank.DEVICE_CLOCK)
                .between(Event.EPOCH, Event.DEVICE_ZERO, Optional.of(Duration.ZERO), Optional.of(Duration.ZERO));
    }

    /** A phone hands its message over at once. */
    Constraint handedOver() {
        return new Clues.Source(
                        clock(),
                        "handing over",
                        "a phone hands its message over within " + Wording.span(rules.handedOver()),
                        List.of(Assumptions.HANDED_OVER),
                        Duration.ZERO,
                        Rank.DEVICE_CLOCK)
                .between(Event.SENT, journey.firstHop(), Optional.empty(), Optional.of(rules.handedOver()));
    }

    private Clock clock() {
        return new Clock(Clock.Kind.PHONE, phone());
    }

    private static Duration resolution(LocalDateTime wall) {
        return wall.equals(wall.truncatedTo(ChronoUnit.SECONDS)) ? Journey.SECOND : Duration.ZERO;
    }

    private static String wall(LocalDateTime wall) {
        return wall.toLocalTime().withNano(0) + " on " + wall.toLocalDate();
    }

    private static String zoned(Optional<ZoneOffset> offset) {
        return offset.map(o -> " (" + (o.getTotalSeconds() == 0 ? "UTC" : o.getId()) + ")")
                .orElse("");
    }
}
