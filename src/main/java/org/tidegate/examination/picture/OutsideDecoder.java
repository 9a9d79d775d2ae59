package org.tidegate.examination.picture;

import java.util.Optional;

/**
 * Converts what Java cannot decode, outside this process. It is an edge: used only where the caller passes one in and
 * {@code DeliveryFacts.decoders} records its name, so that examining again can use the same.
 */
public interface OutsideDecoder {

    /** Recorded name of the decoder for ISO/IEC 23008-12 stills. */
    String HEIF = "heif";

    /** No outside decoder at all. */
    OutsideDecoder NONE = content -> Optional.empty();

    /**
     * @param content the whole file
     * @return the same picture as JPEG, upright as the file's own transformations say; empty where it could not be converted
     */
    Optional<byte[]> toJpeg(byte[] content);
}
