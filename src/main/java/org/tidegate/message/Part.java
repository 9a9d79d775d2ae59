package org.tidegate.message;

import java.util.List;
import java.util.Optional;

/**
 * One node of a message's MIME tree (RFC 2045, RFC 2046).
 *
 * @param path part number such as {@code 2.1}, after the path of the container and a slash where it lies in one; empty for the whole
 * @param header the part's header fields
 * @param type Content-Type; {@code text/plain} where none is given
 * @param disposition Content-Disposition
 * @param children parts of a multipart; empty for a leaf
 */
record Part(String path, HeaderSection header, Parameters type, Parameters disposition, List<Part> children) {

    boolean isMultipart() {
        return !children.isEmpty();
    }

    Optional<String> fileName() {
        return disposition
                .get("filename")
                .or(() -> type.get("name"))
                .map(name -> name.replaceAll("^.*[/\\\\]", "")
                        .replaceAll("\\p{Cntrl}", "")
                        .strip())
                .filter(name -> !name.isEmpty());
    }

    /** Whether it is text to be read with the message rather than a file. */
    boolean isBodyText() {
        return (type.value().equals("text/plain") || type.value().equals("text/html"))
                && !disposition.value().equals("attachment")
                && fileName().isEmpty();
    }

    /** Whether it is a message in a message, however it is encoded. */
    boolean isMessage() {
        return type.value().equals("message/rfc822") || type.value().equals("message/global");
    }

    boolean isInline() {
        return disposition.value().equals("inline")
                || (!disposition.value().equals("attachment")
                        && header.first("content-id").isPresent());
    }

    byte[] decoded(List<Problem> problems) {
        String encoding = header.first("content-transfer-encoding").orElse("");
        return TransferEncoding.decode(header.body(), encoding, path, problems);
    }
}
