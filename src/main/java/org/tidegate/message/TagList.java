package org.tidegate.message;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** {@code tag=value; tag=value} as in DKIM-Signature (RFC 6376 §3.2). */
final class TagList {

    private TagList() {}

    /** Tags in lower case with their values, white space around them removed; the first of equal tags stands. */
    static Map<String, String> parse(String text) {
        Map<String, String> tags = new LinkedHashMap<>();
        for (String part : text.split(";", -1)) {
            int equals = part.indexOf('=');
            if (equals > 0) {
                tags.putIfAbsent(
                        part.substring(0, equals).strip().toLowerCase(Locale.ROOT),
                        part.substring(equals + 1).strip());
            }
        }
        return tags;
    }
}
