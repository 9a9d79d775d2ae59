package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.Optional;

/**
 * Decodes what Java cannot, outside this process. It is an edge: used only where the caller passes one in and
 * {@code DeliveryFacts.decoders} records its name, so that examining again can use the same.
 */
public interface OutsideDecoder {

    /** Recorded name of the decoder for ISO/IEC 23008-12 stills. */
    String HEIF = "heif";

    /** No outside decoder at all. */
    OutsideDecoder NONE = (content, longSide) -> Optional.empty();

    /**
     * @param content the whole file
     * @param longSide pixels of the longer side that are needed at most
     * @return upright as the file's own transformations say; empty where it could not be decoded
     */
    Optional<BufferedImage> decode(byte[] content, int longSide);
}
