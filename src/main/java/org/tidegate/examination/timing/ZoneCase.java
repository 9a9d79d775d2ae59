package org.tidegate.examination.timing;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.CaptureClue;
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

    static List<ZoneCase> of(PhotoClues photo, TimingRules rules) {
        Optional<CaptureClue> capture = photo.capture();
        if (capture.isEmpty() || capture.get().offset().isPresent()) {
            return List.of(new ZoneCase(capture.flatMap(CaptureClue::offset), Standing.WRITTEN));
        }
        LocalDateTime wall = capture.get().wall();
        if (!photo.samePhone()) {
            return anywhere(wall, rules);
        }
        if (photo.dateOffset().isEmpty()) {
            return List.of(new ZoneCase(Optional.empty(), Standing.FROM_DATE));
        }
        return withDate(photo.dateOffset().get(), wall, rules);
    }

    /** A Date in UTC may be the program's habit rather than the phone's zone; any other offset is the phone's. */
    private static List<ZoneCase> withDate(ZoneOffset date, LocalDateTime wall, TimingRules rules) {
        List<ZoneCase> cases = new ArrayList<>();
        cases.add(new ZoneCase(Optional.of(date), Standing.FROM_DATE));
        otherSideOfChange(date, wall, rules.zone())
                .ifPresent(o -> cases.add(new ZoneCase(Optional.of(o), Standing.FROM_DATE)));
        if (date.equals(ZoneOffset.UTC) && !clinicOffsets(wall, rules.zone()).contains(date)) {
            anywhere(wall, rules).stream()
                    .filter(c -> !c.offset().equals(Optional.of(date)))
                    .forEach(cases::add);
        }
        return cases;
    }

    /** The phone in the clinic's zone changed its offset between photo and message, or within the hour that occurs twice. */
    private static Optional<ZoneOffset> otherSideOfChange(ZoneOffset date, LocalDateTime wall, ZoneId zone) {
        List<ZoneOffset> near = List.of(
                zone.getRules().getOffset(wall.minusHours(3)), zone.getRules().getOffset(wall.plusHours(3)));
        return near.contains(date) ? near.stream().filter(o -> !o.equals(date)).findFirst() : Optional.empty();
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

    private static List<ZoneOffset> clinicOffsets(LocalDateTime wall, ZoneId zone) {
        List<ZoneOffset> valid = zone.getRules().getValidOffsets(wall);
        return valid.isEmpty() ? List.of(zone.getRules().getOffset(wall)) : valid;
    }
}
