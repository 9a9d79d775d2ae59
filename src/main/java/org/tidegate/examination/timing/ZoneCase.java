package org.tidegate.examination.timing;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.CaptureClue;
import org.tidegate.message.HeaderDate;
import org.tidegate.rules.TimingRules;

/**
 * One zone in which a photo's time may have been written: one network each.
 *
 * @param offset empty where it cancels out, or where the photo has no time
 * @param standing how we come by it
 */
record ZoneCase(Optional<ZoneOffset> offset, Standing standing) {

    enum Standing {
        /** The file gives it, or nothing needs it. */
        WRITTEN,
        /** The same phone wrote it into the message's Date. */
        FROM_DATE,
        /** The clinic's zone at that time. */
        CLINIC,
        /** One in use somewhere else. */
        ELSEWHERE
    }

    List<Assumption> leansOn() {
        return switch (standing) {
            case WRITTEN, ELSEWHERE -> List.of();
            case FROM_DATE -> List.of(Assumptions.SAME_PHONE);
            case CLINIC -> List.of(Assumptions.CLINIC_ZONE);
        };
    }

    /**
     * The zones to try, the best-founded first.
     *
     * @param date the message's Date where the same phone wrote it
     */
    static List<ZoneCase> of(Optional<CaptureClue> capture, Optional<HeaderDate> date, TimingRules rules) {
        if (capture.isEmpty() || capture.get().offset().isPresent()) {
            return List.of(new ZoneCase(capture.flatMap(CaptureClue::offset), Standing.WRITTEN));
        }
        LocalDateTime wall = capture.get().wall();
        if (date.isEmpty() || date.get().reckonedIn().isPresent()) {
            return anywhere(wall, rules);
        }
        return date.get()
                .offset()
                .map(offset -> fromDate(offset, date.get().instant(), wall, rules))
                .orElseGet(() -> List.of(new ZoneCase(Optional.empty(), Standing.FROM_DATE)));
    }

    /**
     * Where a photo without a zone takes it from the message's Date, the zones in which its phone may have stood before a journey: an
     * {@code outside} must hold in them too.
     */
    static List<ZoneCase> changedBetween(Optional<CaptureClue> capture, Optional<HeaderDate> date, TimingRules rules) {
        Optional<ZoneOffset> offset = date.flatMap(HeaderDate::offset).filter(o -> !o.equals(ZoneOffset.UTC));
        if (offset.isEmpty() || capture.flatMap(CaptureClue::offset).isPresent()) {
            return List.of();
        }
        return capture.stream()
                .flatMap(c -> anywhere(c.wall(), rules).stream())
                .flatMap(zone -> zone.offset().stream())
                .filter(o -> !o.equals(offset.get()))
                .map(o -> new ZoneCase(Optional.of(o), Standing.ELSEWHERE))
                .toList();
    }

    private static List<ZoneCase> fromDate(ZoneOffset date, Instant sent, LocalDateTime wall, TimingRules rules) {
        boolean clinics = rules.zone().getRules().getOffset(sent).equals(date);
        List<ZoneCase> fromDate = (clinics ? clinicOffsets(wall, rules.zone()) : List.of(date))
                .stream()
                        .map(o -> new ZoneCase(Optional.of(o), Standing.FROM_DATE))
                        .toList();
        return date.equals(ZoneOffset.UTC) ? orElsewhere(fromDate, wall, rules) : fromDate;
    }

    /** A Date in UTC may be the program's habit rather than the phone's zone. */
    private static List<ZoneCase> orElsewhere(List<ZoneCase> fromDate, LocalDateTime wall, TimingRules rules) {
        List<ZoneCase> cases = new ArrayList<>(fromDate);
        anywhere(wall, rules).stream()
                .filter(c -> fromDate.stream().noneMatch(d -> d.offset().equals(c.offset())))
                .forEach(cases::add);
        return cases;
    }

    private static List<ZoneCase> anywhere(LocalDateTime wall, TimingRules rules) {
        List<ZoneOffset> clinic = clinicOffsets(wall, rules.zone());
        List<ZoneCase> cases = new ArrayList<>();
        clinic.forEach(o -> cases.add(new ZoneCase(Optional.of(o), Standing.CLINIC)));
        rules.offsets().stream()
                .map(ZoneOffset::of)
                .filter(o -> !clinic.contains(o))
                .forEach(o -> cases.add(new ZoneCase(Optional.of(o), Standing.ELSEWHERE)));
        return cases;
    }

    /** Two in the hour that occurs twice; in the one that does not exist, the offset before it. */
    private static List<ZoneOffset> clinicOffsets(LocalDateTime wall, ZoneId zone) {
        List<ZoneOffset> valid = zone.getRules().getValidOffsets(wall);
        return valid.isEmpty() ? List.of(zone.getRules().getOffset(wall)) : valid;
    }
}
