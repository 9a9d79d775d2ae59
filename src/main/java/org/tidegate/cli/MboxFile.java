package org.tidegate.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Messages of an mbox file (RFC 4155): each behind a line that starts with {@code From }; {@code >From } in a body is unquoted. */
final class MboxFile {

    private MboxFile() {}

    static List<byte[]> read(Path file) {
        try {
            return split(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new Refusal(file + " cannot be read: " + e.getMessage(), e);
        }
    }

    static List<byte[]> split(byte[] all) {
        List<byte[]> messages = new ArrayList<>();
        ByteArrayOutputStream open = new ByteArrayOutputStream();
        boolean inside = false;
        int at = 0;
        while (at < all.length) {
            int end = at;
            while (end < all.length && all[end] != '\n') {
                end++;
            }
            end = Math.min(all.length, end + 1);
            String head = new String(all, at, Math.min(6, end - at), StandardCharsets.ISO_8859_1);
            if (head.startsWith("From ")) {
                if (inside) {
                    messages.add(open.toByteArray());
                }
                open.reset();
                inside = true;
            } else if (inside) {
                int skip = head.startsWith(">From ") ? 1 : 0;
                open.write(all, at + skip, end - at - skip);
            }
            at = end;
        }
        if (inside) {
            messages.add(open.toByteArray());
        }
        return messages;
    }
}
