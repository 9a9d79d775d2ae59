package org.tidegate.message;

import java.util.Optional;

/**
 * One file that a message carries, at whatever depth, its type told by content.
 *
 * @param path where it lies, outermost first: {@code 2}, {@code 2/photo.jpg}, {@code 3/page-1/image-0}
 * @param fileName decoded name, path parts removed
 * @param declaredType the media type that the message claims, lower case
 * @param type the media type that the bytes show, lower case
 * @param container what it was found in
 * @param inline shown within the text (Content-Disposition inline or referenced by Content-ID)
 * @param content the decoded bytes; not to be changed
 */
public record Attachment(
        String path,
        Optional<String> fileName,
        String declaredType,
        String type,
        Container container,
        boolean inline,
        byte[] content) {

    public enum Container {
        MESSAGE,
        FORWARDED_MESSAGE,
        PDF,
        OFFICE,
        TNEF,
        ZIP
    }
}
