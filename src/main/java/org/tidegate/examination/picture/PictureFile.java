package org.tidegate.examination.picture;

import java.util.Optional;
import org.tidegate.rules.PictureRules;

/** One picture file opened by itself, outside any message. */
public final class PictureFile {

    private PictureFile() {}

    /** Upright, within the pixel limit of the rules; empty where it is no picture that can be decoded here. */
    public static Optional<FinePicture> open(byte[] content, PictureRules rules) {
        int orientation = FileFactsReader.read(content).orientation();
        return new PictureDecoder(rules.maxPixels())
                .decode(content, PictureFormat.of(content), orientation)
                .picture();
    }
}
