package org.tidegate.message;

import java.io.IOException;

/** Opens one kind of container. */
interface Unpacker {

    /** Whether it opens files of that media type. */
    boolean opens(String type);

    /**
     * Hands every file inside to the collector.
     *
     * @throws IOException where the container is damaged; what was handed over before stays
     */
    void unpack(Attachment container, AttachmentCollector into) throws IOException;
}
