package org.tidegate.examination.picture;

import com.drew.metadata.Metadata;
import com.drew.metadata.xmp.XmpDirectory;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.CaptureClue.Kind;

/** Times of the XMP packet (ISO 16684-1; the photoshop and exif name spaces are part of its second part). */
final class XmpTimes {

    private static final List<String> CAPTURED =
            List.of("exif:DateTimeOriginal", "photoshop:DateCreated", "xmp:CreateDate", "exif:DateTimeDigitized");

    private XmpTimes() {}

    static List<CaptureClue> of(Metadata metadata) {
        List<CaptureClue> clues = new ArrayList<>();
        for (String property : CAPTURED) {
            values(metadata, property)
                    .flatMap(v -> WrittenTimes.iso(v).stream())
                    .map(w -> new CaptureClue(Kind.XMP, w.wall(), w.offset(), "XMP " + property))
                    .forEach(clues::add);
        }
        return clues;
    }

    static Optional<String> creatorTool(Metadata metadata) {
        return values(metadata, "xmp:CreatorTool")
                .flatMap(v -> FileFactsReader.clean(v).stream())
                .findFirst();
    }

    private static Stream<String> values(Metadata metadata, String property) {
        return metadata.getDirectoriesOfType(XmpDirectory.class).stream()
                .map(XmpDirectory::getXmpProperties)
                .flatMap(properties -> value(properties, property).stream());
    }

    private static Optional<String> value(Map<String, String> properties, String property) {
        return Optional.ofNullable(properties.get(property));
    }
}
