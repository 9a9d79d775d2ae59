package org.tidegate.message;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Optional;
import org.jsoup.Jsoup;

/** Collects what the sender wrote: plain text where there is any, else HTML turned into text. */
final class BodyText {

    private final int most;
    private final StringBuilder plain = new StringBuilder();
    private final StringBuilder html = new StringBuilder();

    BodyText(int most) {
        this.most = most;
    }

    /** In {@code multipart/alternative} (RFC 2046 §5.1.4) both forms say the same; elsewhere too, plain text wins. */
    void alternatives(boolean inAlternative) {
        if (!inAlternative && !plain.isEmpty()) {
            append("");
        }
    }

    void append(String line) {
        if (plain.length() < most) {
            plain.append(line).append('\n');
        }
    }

    void part(byte[] content, String type, Optional<String> charset) {
        StringBuilder into = type.equals("text/html") ? html : plain;
        if (into.length() < most) {
            into.append(decode(content, charset)).append('\n');
        }
    }

    String text() {
        String found =
                plain.toString().isBlank() ? Jsoup.parse(cut(html.toString())).wholeText() : plain.toString();
        return cut(found.replace("\r\n", "\n")).strip();
    }

    private String cut(String s) {
        return s.length() > most ? s.substring(0, most) : s;
    }

    private static String decode(byte[] content, Optional<String> charset) {
        Optional<Charset> named = charset.flatMap(BodyText::charset);
        if (named.isPresent() && !named.get().equals(StandardCharsets.US_ASCII)) {
            return new String(content, named.get());
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(content, Charset.forName("windows-1252"));
        }
    }

    private static Optional<Charset> charset(String name) {
        try {
            return Optional.of(Charset.forName(jakarta.mail.internet.MimeUtility.javaCharset(name)));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            return Optional.empty();
        }
    }
}
