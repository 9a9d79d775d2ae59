package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.Optional;
import org.tidegate.finding.PictureFinding.Decoding;

/**
 * What came of decoding one picture.
 *
 * @param picture its upright RGB pixels at most about {@link PictureDecoder#LONG_SIDE} on the longer side
 * @param width of the file's picture, upright; 0 where unknown
 * @param height of the file's picture, upright; 0 where unknown
 */
record Decoded(Optional<FinePicture> picture, int width, int height, Decoding state) {

    static Decoded without(Decoding state, int width, int height) {
        return new Decoded(Optional.empty(), width, height, state);
    }

    Optional<BufferedImage> image() {
        return picture.map(FinePicture::working);
    }
}
