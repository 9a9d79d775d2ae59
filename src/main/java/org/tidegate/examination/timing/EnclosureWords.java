package org.tidegate.examination.timing;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Event;
import org.tidegate.rules.EnclosureTexts;

/** Clues, assumptions and the drawing's labels in a participant's language. */
record EnclosureWords(EnclosureTexts texts, ZoneId zone) implements DrawingWords {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    @Override
    public String lane(Clock clock) {
        EnclosureTexts.Lanes lanes = texts.lanes();
        return switch (clock.kind()) {
            case CLINIC -> lanes.clinic().text();
            case OWN_SERVER -> lanes.ownServer().text();
            case OTHER_SERVER -> lanes.server().fill(Map.of("host", clock.name()));
            case PHONE -> lanes.phone().fill(Map.of("phone", clock.name()));
            case SATELLITE -> lanes.satellite().text();
            case WORDS -> lanes.words().text();
        };
    }

    @Override
    public String event(Event event) {
        EnclosureTexts.Events events = texts.events();
        return switch (event.kind()) {
            case TEST -> events.test().text();
            case PHOTO -> events.photo().text();
            case SENT -> events.sent().text();
            case HOP -> events.passedOn().text();
            case SIGNED -> events.signed().text();
            case ARRIVED -> events.arrived().text();
            case EPOCH, DEVICE_ZERO -> "";
        };
    }

    @Override
    public String photograph(String from, String until) {
        return texts.events().photograph().fill(Map.of("from", from, "to", until));
    }

    @Override
    public String sendBy(String limit) {
        return texts.events().sendBy().fill(Map.of("time", limit));
    }

    /** Stands among what follows from the clocks. */
    @Override
    public String wrongBy(TimeJudgement.PhoneClockError error) {
        return "";
    }

    /** What one clue says, as a sentence. */
    String clue(DrawnClue c, boolean timer) {
        EnclosureTexts.Clues clues = texts.clues();
        Map<String, String> values = Map.of(
                "from", clock(c.from()),
                "to", clock(c.to()),
                "time", clock(Optional.of(c.anchor())),
                "host", c.clock().name());
        return switch (c.clock().kind()) {
            case CLINIC -> (timer ? clues.timer() : clues.slot()).fill(values);
            case WORDS -> clues.wrote().fill(values);
            case OWN_SERVER -> clues.arrived().fill(values);
            case OTHER_SERVER ->
                (c.event().kind() == Event.Kind.SIGNED ? clues.signed() : clues.passedOn()).fill(values);
            case SATELLITE -> (c.from().isPresent() ? clues.satellite() : clues.satelliteBy()).fill(values);
            case PHONE -> ofPhone(c, clues).fill(values);
        };
    }

    private static org.tidegate.rules.Template ofPhone(DrawnClue c, EnclosureTexts.Clues clues) {
        if (c.event().equals(Event.SENT)) {
            return clues.sent();
        }
        return c.from().isPresent() ? clues.photo() : clues.photoBy();
    }

    /** What was taken for granted, as part of a sentence. */
    String assumed(Assumption a) {
        EnclosureTexts.Assumed assumed = texts.assumed();
        return switch (a.name()) {
            case "same-phone" -> assumed.samePhone().text();
            case "test-in-slot" -> assumed.testInSlot().text();
            case "timer-within-1-min" -> assumed.timerRight().text();
            case "clock-right" -> assumed.clockRight().fill(Map.of("phone", a.about()));
            case "server-honest" -> assumed.serverHonest().fill(Map.of("host", a.about()));
            case "handed-over-promptly" -> assumed.handedOver().text();
            case "phone-in-clinic-zone" -> assumed.clinicZone().text();
            case "fresh-fix" -> assumed.freshFix().text();
            case "stated-in-phone-zone" -> assumed.statedInPhoneZone().text();
            case "stated-is-timer" -> assumed.statedIsTimer().text();
            default -> a.toString();
        };
    }

    private String clock(Optional<Instant> time) {
        return time.map(t -> TIME.format(LocalDateTime.ofInstant(t, zone))).orElse("…");
    }
}
