package org.tidegate.examination.subject;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Base64;
import java.util.Locale;
import java.util.Optional;

/** Decodes encoded-words (RFC 2047) that nobody decoded before; what is not well-formed stays as it is. */
final class EncodedWords {

    private EncodedWords() {}

    static TracedText decode(TracedText in) {
        if (!in.text().contains("=?")) {
            return in;
        }
        TracedText.Rewrite out = new TracedText.Rewrite(in);
        int i = 0;
        while (i < in.length()) {
            Optional<Word> word = wordAt(in.text(), i);
            if (word.isEmpty()) {
                out.append(in.text().charAt(i), i);
                i++;
                continue;
            }
            out.append(word.get().decoded(), i);
            i = afterGap(in.text(), word.get().end());
        }
        return out.done();
    }

    private record Word(String decoded, int end) {}

    /** RFC 2047 section 6.2: white space between adjacent encoded-words is not shown. */
    private static int afterGap(String s, int end) {
        int i = end;
        while (i < s.length() && Character.isWhitespace(s.charAt(i))) {
            i++;
        }
        return wordAt(s, i).isPresent() ? i : end;
    }

    private static Optional<Word> wordAt(String s, int at) {
        if (!s.startsWith("=?", at)) {
            return Optional.empty();
        }
        int charsetEnd = s.indexOf('?', at + 2);
        if (charsetEnd < 0 || charsetEnd + 2 >= s.length() || s.charAt(charsetEnd + 2) != '?') {
            return Optional.empty();
        }
        int end = s.indexOf("?=", charsetEnd + 3);
        if (end < 0) {
            return Optional.empty();
        }
        return decode(s.substring(at + 2, charsetEnd), s.charAt(charsetEnd + 1), s.substring(charsetEnd + 3, end))
                .map(decoded -> new Word(decoded, end + 2));
    }

    private static Optional<String> decode(String charset, char encoding, String text) {
        try {
            // RFC 2231 section 5: a language may follow the charset after an asterisk
            String name = charset.split("\\*", 2)[0];
            byte[] bytes =
                    switch (Character.toLowerCase(encoding)) {
                        case 'b' -> Base64.getMimeDecoder().decode(text.getBytes(StandardCharsets.ISO_8859_1));
                        case 'q' -> quoted(text);
                        default -> null;
                    };
            return Optional.ofNullable(bytes).map(b -> new String(b, Charset.forName(name.toLowerCase(Locale.ROOT))));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static byte[] quoted(String text) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '=' && i + 2 < text.length() && hex(text, i + 1) >= 0) {
                out.write(hex(text, i + 1));
                i += 2;
            } else {
                out.write(c == '_' ? ' ' : c);
            }
        }
        return out.toByteArray();
    }

    private static int hex(String s, int at) {
        int high = Character.digit(s.charAt(at), 16);
        int low = Character.digit(s.charAt(at + 1), 16);
        return high < 0 || low < 0 ? -1 : high * 16 + low;
    }
}
