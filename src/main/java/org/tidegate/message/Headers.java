package org.tidegate.message;

import jakarta.mail.internet.MimeUtility;
import java.io.UnsupportedEncodingException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The header section of a message, unfolded, in order, read leniently (RFC 5322 §2.2). */
final class Headers {

    private static final Charset WINDOWS_LATIN = Charset.forName("windows-1252");

    /** One field; {@code position} counts from the top. */
    record Field(int position, String name, String value) {}

    private final List<Field> fields;
    private final int bodyStart;

    private Headers(List<Field> fields, int bodyStart) {
        this.fields = List.copyOf(fields);
        this.bodyStart = bodyStart;
    }

    /** Reads up to the first empty line; a line that is neither field nor continuation is reported and skipped. */
    static Headers read(byte[] raw, Limits limits, List<Problem> problems) {
        List<Field> fields = new ArrayList<>();
        int at = 0;
        StringBuilder open = new StringBuilder();
        while (at < raw.length) {
            int end = lineEnd(raw, at);
            String line = text(raw, at, end);
            int next = Math.min(raw.length, skipBreak(raw, end));
            if (line.isEmpty()) {
                at = next;
                break;
            }
            if (at > limits.headerBytes() || fields.size() >= limits.headerFields()) {
                problems.add(new Problem(
                        Problem.Kind.OVER_LIMIT,
                        "header",
                        "The header section is longer than the limit; the rest of it was not read."));
                at = bodyAfter(raw, at);
                break;
            }
            if (line.charAt(0) == ' ' || line.charAt(0) == '\t') {
                open.append(' ').append(line.strip());
            } else {
                close(open, fields, problems);
                open.setLength(0);
                open.append(line);
            }
            at = next;
        }
        close(open, fields, problems);
        return new Headers(fields, at);
    }

    private static void close(StringBuilder open, List<Field> fields, List<Problem> problems) {
        if (open.isEmpty()) {
            return;
        }
        String line = open.toString();
        int colon = line.indexOf(':');
        String name = colon < 0 ? "" : line.substring(0, colon).strip();
        if (name.isEmpty() || name.indexOf(' ') >= 0) {
            if (!(fields.isEmpty() && line.startsWith("From "))) {
                problems.add(new Problem(
                        Problem.Kind.MALFORMED, "header", "A header line without a field name was skipped."));
            }
            return;
        }
        fields.add(new Field(fields.size(), name, line.substring(colon + 1).strip()));
    }

    private static int lineEnd(byte[] raw, int from) {
        int i = from;
        while (i < raw.length && raw[i] != '\n' && raw[i] != '\r') {
            i++;
        }
        return i;
    }

    private static int skipBreak(byte[] raw, int end) {
        if (end < raw.length && raw[end] == '\r' && end + 1 < raw.length && raw[end + 1] == '\n') {
            return end + 2;
        }
        return end + 1;
    }

    private static int bodyAfter(byte[] raw, int from) {
        for (int i = from; i + 1 < raw.length; i++) {
            boolean lf = raw[i] == '\n' && raw[i + 1] == '\n';
            boolean crlf = i + 3 < raw.length
                    && raw[i] == '\r'
                    && raw[i + 1] == '\n'
                    && raw[i + 2] == '\r'
                    && raw[i + 3] == '\n';
            if (lf || crlf) {
                return i + (lf ? 2 : 4);
            }
        }
        return raw.length;
    }

    /** UTF-8 as RFC 6532 allows, else Windows-1252, which mail programs of old sent unlabelled. */
    private static String text(byte[] raw, int from, int end) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(raw, from, end - from))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(raw, from, end - from, WINDOWS_LATIN);
        }
    }

    int bodyStart() {
        return bodyStart;
    }

    List<Field> all(String name) {
        return fields.stream().filter(f -> f.name().equalsIgnoreCase(name)).toList();
    }

    Optional<String> first(String name) {
        return all(name).stream().map(Field::value).findFirst();
    }

    boolean has(String name) {
        return first(name).isPresent();
    }

    /** A decoded unstructured field (RFC 2047), empty text counting as absent. */
    Optional<String> decoded(String name) {
        return first(name).map(Headers::decode).filter(s -> !s.isBlank());
    }

    static String decode(String value) {
        try {
            return MimeUtility.decodeText(value);
        } catch (UnsupportedEncodingException | RuntimeException e) {
            return value;
        }
    }

    Optional<String> lower(String name) {
        return first(name).map(s -> s.toLowerCase(Locale.ROOT));
    }

    List<Field> fields() {
        return fields;
    }
}
