package org.tidegate.examination.picture;

import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.CaptureClue.Kind;

/** Every time that a file gives for itself. */
final class CaptureTimes {

    /** A file with more times than this is no photo straight from a camera. */
    private static final int MOST = 40;

    private CaptureTimes() {}

    static List<CaptureClue> of(Metadata metadata) {
        Set<CaptureClue> clues = new LinkedHashSet<>();
        for (Directory d : metadata.getDirectoriesOfType(ExifSubIFDDirectory.class)) {
            exif(Kind.EXIF_ORIGINAL, d, d, ORIGINAL).ifPresent(clues::add);
            exif(Kind.EXIF_DIGITIZED, d, d, DIGITIZED).ifPresent(clues::add);
        }
        clues.addAll(GpsTimes.of(metadata));
        clues.addAll(XmpTimes.of(metadata));
        clues.addAll(PngTimes.of(metadata));
        clues.addAll(modified(metadata));
        return clues.stream().limit(MOST).toList();
    }

    /** Tags that make up one EXIF time: date-time, offset and sub-seconds; EXIF 2.32 §4.6.5 tables 7 and 8. */
    private record Tags(int time, int offset, int subSeconds, String place) {}

    private static final Tags ORIGINAL = new Tags(
            ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL,
            ExifSubIFDDirectory.TAG_TIME_ZONE_ORIGINAL,
            ExifSubIFDDirectory.TAG_SUBSECOND_TIME_ORIGINAL,
            "Exif SubIFD 0x9003 DateTimeOriginal");
    private static final Tags DIGITIZED = new Tags(
            ExifSubIFDDirectory.TAG_DATETIME_DIGITIZED,
            ExifSubIFDDirectory.TAG_TIME_ZONE_DIGITIZED,
            ExifSubIFDDirectory.TAG_SUBSECOND_TIME_DIGITIZED,
            "Exif SubIFD 0x9004 DateTimeDigitized");
    private static final Tags MODIFIED = new Tags(
            ExifIFD0Directory.TAG_DATETIME,
            ExifSubIFDDirectory.TAG_TIME_ZONE,
            ExifSubIFDDirectory.TAG_SUBSECOND_TIME,
            "Exif IFD0 0x0132 DateTime");

    private static List<CaptureClue> modified(Metadata metadata) {
        List<CaptureClue> clues = new ArrayList<>();
        Directory sub = metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
        for (Directory d : metadata.getDirectoriesOfType(ExifIFD0Directory.class)) {
            exif(Kind.EXIF_MODIFIED, d, sub == null ? d : sub, MODIFIED).ifPresent(clues::add);
        }
        return clues;
    }

    private static Optional<CaptureClue> exif(Kind kind, Directory times, Directory rest, Tags tags) {
        return WrittenTimes.exif(times.getString(tags.time()), rest.getString(tags.subSeconds()))
                .map(wall ->
                        new CaptureClue(kind, wall, WrittenTimes.offset(rest.getString(tags.offset())), tags.place()));
    }
}
