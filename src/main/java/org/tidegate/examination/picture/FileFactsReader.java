package org.tidegate.examination.picture;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the records beside the pixels: EXIF, XMP, PNG text and time. Positions on Earth are never looked at. */
final class FileFactsReader {

    private static final int LONGEST = 120;

    private FileFactsReader() {}

    static FileFacts read(byte[] content) {
        Metadata metadata = metadata(content);
        return new FileFacts(
                orientation(metadata),
                text(metadata, ExifIFD0Directory.TAG_MAKE),
                text(metadata, ExifIFD0Directory.TAG_MODEL),
                text(metadata, ExifIFD0Directory.TAG_SOFTWARE).or(() -> XmpTimes.creatorTool(metadata)),
                CaptureTimes.of(metadata));
    }

    private static Metadata metadata(byte[] content) {
        byte[] records = PictureFormat.of(content) == PictureFormat.PNG ? PngRecords.of(content) : content;
        try {
            return ImageMetadataReader.readMetadata(new ByteArrayInputStream(records), records.length);
        } catch (IOException | ImageProcessingException | RuntimeException e) {
            // Damaged records say nothing; the reader throws whatever comes to hand on some of them.
            return new Metadata();
        }
    }

    private static int orientation(Metadata metadata) {
        for (Directory d : metadata.getDirectoriesOfType(ExifIFD0Directory.class)) {
            Integer o = d.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
            if (o != null && o >= 1 && o <= 8) {
                return o;
            }
        }
        return 1;
    }

    private static Optional<String> text(Metadata metadata, int tag) {
        return metadata.getDirectoriesOfType(ExifIFD0Directory.class).stream()
                .map(d -> d.getString(tag))
                .flatMap(s -> clean(s).stream())
                .findFirst();
    }

    /** Without padding and control characters; empty where nothing is left. */
    static Optional<String> clean(@Nullable String raw) {
        if (raw == null) {
            return Optional.empty();
        }
        String s = raw.replaceAll("\\p{Cntrl}+", " ").strip();
        return s.isEmpty() ? Optional.empty() : Optional.of(s.substring(0, Math.min(LONGEST, s.length())));
    }
}
