package org.tidegate.message;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value with parameters, as in Content-Type and Content-Disposition (RFC 2045 §5.1, RFC 2183), extended ones of RFC 2231
 * and encoded-words in quoted strings included.
 *
 * @param value before the first semicolon, lower case
 * @param named parameters by lower-case name, decoded
 */
record Parameters(String value, Map<String, String> named) {

    private static final Pattern PARAMETER =
            Pattern.compile(";\\s*([^\\s=;\"]+)\\s*=\\s*(?:\"((?:[^\"\\\\]|\\\\.)*+)\"?|([^;]*))", Pattern.DOTALL);
    private static final Pattern EXTENDED = Pattern.compile("^([^*]+)(?:\\*(\\d{1,3}))?(\\*)?$");
    /** No honest parameters are longer. */
    private static final int MOST_CHARS = 20_000;

    private static final Parameters NONE = new Parameters("", Map.of());

    Optional<String> get(String name) {
        return Optional.ofNullable(named.get(name)).filter(v -> !v.isBlank());
    }

    static Parameters parse(Optional<String> field) {
        if (field.isEmpty()) {
            return NONE;
        }
        String text = field.get().substring(0, Math.min(field.get().length(), MOST_CHARS));
        int semicolon = text.indexOf(';');
        String value = Comments.strip(semicolon < 0 ? text : text.substring(0, semicolon))
                .strip();
        Map<String, String> plain = new TreeMap<>();
        Map<String, TreeMap<Integer, Piece>> pieces = new TreeMap<>();
        Matcher m = PARAMETER.matcher(semicolon < 0 ? "" : text.substring(semicolon));
        while (m.find()) {
            String raw = m.group(2) != null
                    ? unescape(m.group(2))
                    : Comments.strip(m.group(3)).strip();
            collect(m.group(1).toLowerCase(Locale.ROOT), raw, plain, pieces);
        }
        pieces.forEach((name, list) -> plain.put(name, join(new ArrayList<>(list.values()))));
        return new Parameters(value.toLowerCase(Locale.ROOT), plain);
    }

    private static void collect(
            String name, String raw, Map<String, String> plain, Map<String, TreeMap<Integer, Piece>> pieces) {
        Matcher extended = EXTENDED.matcher(name);
        if (!extended.matches() || (extended.group(2) == null && extended.group(3) == null)) {
            plain.putIfAbsent(name, EncodedWords.decode(raw));
            return;
        }
        int number = extended.group(2) == null ? 0 : Integer.parseInt(extended.group(2));
        pieces.computeIfAbsent(extended.group(1), n -> new TreeMap<>())
                .putIfAbsent(number, new Piece(raw, extended.group(3) != null));
    }

    private static String unescape(String quoted) {
        // Windows paths are written with bare backslashes; only an escaped quote or backslash is unescaped.
        return quoted.replaceAll("\\\\([\"\\\\])", "$1");
    }

    private record Piece(String text, boolean encoded) {}

    private static String join(List<Piece> pieces) {
        Optional<String> charset = Optional.empty();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < pieces.size(); i++) {
            String text = pieces.get(i).text();
            String[] parts = i == 0 && pieces.get(i).encoded() ? text.split("'", 3) : new String[0];
            if (parts.length == 3) {
                charset = Optional.of(parts[0]).filter(c -> !c.isEmpty());
                text = parts[2];
            }
            byte[] plain = text.getBytes(StandardCharsets.UTF_8);
            bytes.writeBytes(pieces.get(i).encoded() ? Escapes.decode(Slice.of(plain), '%') : plain);
        }
        return Charsets.decode(bytes.toByteArray(), charset);
    }
}
