package org.tidegate.message;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** RFC 2047 encoded-words, language suffix of RFC 2231 §5 included; also inside quoted strings, as many programs write them. */
final class EncodedWords {

    private static final Pattern WORD =
            Pattern.compile("=\\?([^?*\\s]{1,60})(?:\\*[^?\\s]*)?\\?([bBqQ])\\?([^?]*)\\?=");

    private EncodedWords() {}

    /**
     * Decodes every encoded-word of the text. White space between adjacent ones is dropped (RFC 2047 §6.2), and their bytes are
     * joined before decoding, since some programs cut a character in two.
     */
    static String decode(String text) {
        if (!text.contains("=?")) {
            return text;
        }
        StringBuilder out = new StringBuilder();
        Run run = new Run();
        Matcher word = WORD.matcher(text);
        int end = 0;
        while (word.find()) {
            String between = text.substring(end, word.start());
            if (!run.isOpen() || !between.isBlank()) {
                run.flushTo(out);
                out.append(between);
            }
            run.add(word.group(1), bytes(word.group(2), word.group(3)), out);
            end = word.end();
        }
        run.flushTo(out);
        return out.append(text.substring(end)).toString();
    }

    private static byte[] bytes(String encoding, String text) {
        return encoding.equalsIgnoreCase("B") ? base64(text) : q(text);
    }

    private static byte[] base64(String text) {
        String clean = text.replaceAll("[^A-Za-z0-9+/]", "");
        String whole = clean.length() % 4 == 1 ? clean.substring(0, clean.length() - 1) : clean;
        return Base64.getDecoder().decode(whole);
    }

    /** RFC 2047 §4.2: an underscore stands for a space. */
    private static byte[] q(String text) {
        return Escapes.decode(Slice.of(text.replace('_', ' ').getBytes(StandardCharsets.UTF_8)), '=');
    }

    /** Adjacent words of one charset. */
    private static final class Run {
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private String charset = "";

        boolean isOpen() {
            return !charset.isEmpty();
        }

        void add(String name, byte[] more, StringBuilder out) {
            if (!charset.equalsIgnoreCase(name)) {
                flushTo(out);
            }
            charset = name;
            bytes.writeBytes(more);
        }

        void flushTo(StringBuilder out) {
            if (isOpen()) {
                out.append(Charsets.decode(bytes.toByteArray(), Optional.of(charset)));
                bytes.reset();
                charset = "";
            }
        }
    }
}
