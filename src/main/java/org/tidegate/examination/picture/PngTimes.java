package org.tidegate.examination.picture;

import com.drew.lang.KeyValuePair;
import com.drew.metadata.Metadata;
import com.drew.metadata.StringValue;
import com.drew.metadata.png.PngDirectory;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.CaptureClue.Kind;

/** Times of PNG chunks: tIME, which is UTC and the last change, and text under "Creation Time" (PNG 3rd ed. §11.3). */
final class PngTimes {

    private PngTimes() {}

    static List<CaptureClue> of(Metadata metadata) {
        List<CaptureClue> clues = new ArrayList<>();
        for (PngDirectory d : metadata.getDirectoriesOfType(PngDirectory.class)) {
            changed(d.getString(PngDirectory.TAG_LAST_MODIFICATION_TIME)).ifPresent(clues::add);
            created(d.getObject(PngDirectory.TAG_TEXTUAL_DATA)).ifPresent(clues::add);
        }
        return clues;
    }

    private static Optional<CaptureClue> changed(@Nullable String written) {
        return WrittenTimes.exif(written, null)
                .map(wall -> new CaptureClue(Kind.PNG_TIME, wall, Optional.of(ZoneOffset.UTC), "PNG tIME"));
    }

    private static Optional<CaptureClue> created(@Nullable Object texts) {
        if (!(texts instanceof List<?> list)) {
            return Optional.empty();
        }
        return list.stream()
                .filter(KeyValuePair.class::isInstance)
                .map(KeyValuePair.class::cast)
                .filter(pair ->
                        pair.getKey().toLowerCase(Locale.ROOT).replace(" ", "").equals("creationtime"))
                .flatMap(pair -> clue(pair.getValue()).stream())
                .findFirst();
    }

    private static Optional<CaptureClue> clue(StringValue value) {
        String text = value.toString();
        return WrittenTimes.iso(text)
                .or(() -> WrittenTimes.exif(text, null).map(w -> new WrittenTimes.Written(w, Optional.empty())))
                .map(w -> new CaptureClue(Kind.PNG_TIME, w.wall(), w.offset(), "PNG text Creation Time"));
    }
}
