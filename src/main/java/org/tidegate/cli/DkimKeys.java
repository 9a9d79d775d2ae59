package org.tidegate.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tidegate.message.RecordedKey;

/** A file of recorded DKIM keys; blank lines and lines that begin with {@code #} are left out. */
final class DkimKeys {

    private static final int MOST = 10_000;

    private DkimKeys() {}

    static List<RecordedKey> read(Path file) {
        List<RecordedKey> keys = new ArrayList<>();
        int number = 0;
        for (String line : lines(file)) {
            number++;
            if (!line.isBlank() && !line.startsWith("#")) {
                keys.add(key(file, number, line));
            }
        }
        return keys;
    }

    private static RecordedKey key(Path file, int number, String line) {
        return RecordedKey.parse(line)
                .orElseThrow(() -> new Refusal(file + ", line " + number
                        + ": no key; write selector._domainkey.domain, a tab and the TXT record."));
    }

    private static List<String> lines(Path file) {
        try {
            List<String> lines = Files.readAllLines(file);
            if (lines.size() > MOST) {
                throw new Refusal(file + " has more than " + MOST + " lines.");
            }
            return lines;
        } catch (IOException e) {
            throw new Refusal(file + " cannot be read; check the name and its permissions.", e);
        }
    }
}
