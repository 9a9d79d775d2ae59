package org.tidegate.examination.timing;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.CaptureClue.Kind;
import org.tidegate.finding.PictureFinding;

/**
 * What one picture file says of its own time.
 *
 * @param device the best time that the device's own clock gave
 * @param fix the GPS time stamp
 * @param upperOnly the time tells only that the photo was taken no later: of a screenshot, or of a file's last change
 * @param phone make and model
 */
record Capture(Optional<CaptureClue> device, Optional<Instant> fix, boolean upperOnly, String phone) {

    private static final List<Kind> BEST_FIRST =
            List.of(Kind.EXIF_ORIGINAL, Kind.XMP, Kind.FILE_NAME, Kind.EXIF_DIGITIZED, Kind.PNG_TIME);

    static Capture of(PictureFinding picture) {
        boolean screenshot = picture.kind() == PictureFinding.Kind.SCREENSHOT;
        Optional<CaptureClue> device = BEST_FIRST.stream()
                .flatMap(kind -> first(picture, kind).stream())
                .findFirst();
        Optional<Instant> fix = screenshot
                ? Optional.empty()
                : first(picture, Kind.GPS).map(c -> c.wall().toInstant(ZoneOffset.UTC));
        boolean upperOnly =
                screenshot || device.filter(c -> c.kind() == Kind.PNG_TIME).isPresent();
        return new Capture(device, fix, upperOnly, phone(picture));
    }

    /** Whether the file tells when the photo was taken, and not only when something later happened. */
    boolean timed() {
        return fix.isPresent() || (device.isPresent() && !upperOnly);
    }

    private static Optional<CaptureClue> first(PictureFinding picture, Kind kind) {
        return picture.capture().stream().filter(c -> c.kind() == kind).findFirst();
    }

    private static String phone(PictureFinding picture) {
        return Stream.concat(picture.make().stream(), picture.model().stream())
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .reduce((make, model) -> model.startsWith(make) ? model : make + " " + model)
                .orElse("phone");
    }
}
