package org.tidegate.finding;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * A time that a picture file gives for itself.
 *
 * @param kind which record of the file
 * @param wall as written, sub-seconds included
 * @param offset the written offset; empty where the file gives none
 * @param place the tag, for example {@code Exif SubIFD 0x9003 DateTimeOriginal}
 */
public record CaptureClue(Kind kind, LocalDateTime wall, Optional<ZoneOffset> offset, String place) {

    public enum Kind {
        EXIF_ORIGINAL,
        EXIF_DIGITIZED,
        /** UTC by definition (EXIF 2.32 §4.6.6); the position itself is never kept. */
        GPS,
        XMP,
        PNG_TIME,
        FILE_NAME,
        /** When the file was last changed: never a capture time by itself. */
        EXIF_MODIFIED
    }
}
