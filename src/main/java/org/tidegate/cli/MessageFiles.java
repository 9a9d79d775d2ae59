package org.tidegate.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.tidegate.rules.LimitRules;

/** Raw messages from files. */
final class MessageFiles {

    private MessageFiles() {}

    static byte[] read(Path file, LimitRules limits) {
        if (Files.isDirectory(file)) {
            throw new Refusal(file + " is a folder; name the message files in it, or use 'take --maildir'.");
        }
        if (!Files.isReadable(file)) {
            throw new Refusal(file + " cannot be read; check the name and its permissions.");
        }
        try {
            long size = Files.size(file);
            if (size == 0) {
                throw new Refusal(file + " is empty; a message has at least a header.");
            }
            if (size > limits.messageBytes()) {
                throw new Refusal(file + " has " + size + " bytes, more than the limit of " + limits.messageBytes()
                        + " (rules/limits.yaml, message_bytes).");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new Refusal(file + " cannot be read: " + e.getMessage(), e);
        }
    }
}
