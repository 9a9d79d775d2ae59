package org.tidegate.message;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The tags of DKIM-Signature fields (RFC 6376 §3.5); nothing is verified here. */
final class DkimReader {

    private DkimReader() {}

    static List<DkimSignature> read(Headers headers) {
        return headers.all("DKIM-Signature").stream()
                .map(f -> signature(tags(f.value())))
                .toList();
    }

    private static DkimSignature signature(Map<String, String> tags) {
        return new DkimSignature(
                tags.getOrDefault("d", "").toLowerCase(Locale.ROOT),
                tags.getOrDefault("s", ""),
                Optional.ofNullable(tags.get("t")).flatMap(DkimReader::time),
                Arrays.stream(tags.getOrDefault("h", "")
                                .toLowerCase(Locale.ROOT)
                                .split(":"))
                        .filter(s -> !s.isEmpty())
                        .toList(),
                false);
    }

    private static Map<String, String> tags(String value) {
        Map<String, String> tags = new TreeMap<>();
        for (String tag : value.split(";")) {
            int equals = tag.indexOf('=');
            if (equals > 0) {
                tags.put(
                        tag.substring(0, equals).strip(),
                        tag.substring(equals + 1).replaceAll("\\s+", ""));
            }
        }
        return tags;
    }

    private static Optional<Instant> time(String seconds) {
        try {
            return Optional.of(Instant.ofEpochSecond(Long.parseLong(seconds)));
        } catch (NumberFormatException | DateTimeException e) {
            return Optional.empty();
        }
    }
}
