package org.tidegate.sample;

import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

/** Writes one message as mail programs and servers would: CRLF, encoded-words (RFC 2047), Received lines on top (RFC 5321 §4.4). */
final class MailWriter {

    private static final DateTimeFormatter RFC5322 =
            DateTimeFormatter.ofPattern("EEE, d MMM yyyy HH:mm:ss Z", Locale.ENGLISH);

    private final List<String> headers = new ArrayList<>();
    private final List<String> parts = new ArrayList<>();

    static String date(ZonedDateTime time) {
        return RFC5322.format(time);
    }

    /** Adds a header field, its value already encoded and folded. */
    MailWriter header(String name, String value) {
        headers.add(name + ": " + value);
        return this;
    }

    MailWriter text(String body) {
        parts.add("Content-Type: text/plain; charset=utf-8\r\nContent-Transfer-Encoding: 8bit\r\n\r\n"
                + body.replace("\n", "\r\n") + "\r\n");
        return this;
    }

    MailWriter file(String type, String name, byte[] content) {
        String encoded = Base64.getMimeEncoder(76, new byte[] {'\r', '\n'}).encodeToString(content);
        parts.add("Content-Type: " + type + "; name=\"" + name + "\"\r\nContent-Disposition: attachment; filename=\""
                + name + "\"\r\nContent-Transfer-Encoding: base64\r\n\r\n" + encoded + "\r\n");
        return this;
    }

    /** A part written out by the caller, headers included. */
    MailWriter part(String raw) {
        parts.add(raw);
        return this;
    }

    byte[] bytes(String boundary) {
        StringBuilder out = new StringBuilder();
        headers.forEach(h -> out.append(h).append("\r\n"));
        out.append("MIME-Version: 1.0\r\nContent-Type: multipart/mixed; boundary=\"")
                .append(boundary)
                .append("\"\r\n\r\n");
        for (String part : parts) {
            out.append("--").append(boundary).append("\r\n").append(part);
        }
        return out.append("--").append(boundary).append("--\r\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    /** The text as it may stand in a header: plain ASCII as it is, else one UTF-8 encoded-word (RFC 2047 §2) for each 30 characters. */
    static String encoded(String text) {
        if (text.chars().allMatch(c -> c >= 32 && c < 127)) {
            return text;
        }
        List<String> words = new ArrayList<>();
        int[] points = text.codePoints().toArray();
        for (int from = 0; from < points.length; from += 20) {
            String piece = new String(points, from, Math.min(20, points.length - from));
            words.add("=?utf-8?B?" + Base64.getEncoder().encodeToString(piece.getBytes(StandardCharsets.UTF_8)) + "?=");
        }
        return String.join("\r\n ", words);
    }
}
