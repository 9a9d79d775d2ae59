package org.tidegate.message;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Locale;
import java.util.Optional;

/** Bytes to text when the label may be missing, unknown or wrong. Never the platform's default charset. */
final class Charsets {

    /** Superset of ISO-8859-1 that also names the bytes 0x80–0x9F, which mail labelled Latin-1 often carries. */
    private static final Charset WESTERN = Charset.forName("windows-1252");

    private Charsets() {}

    /** The charset of that name; empty where it is unknown. */
    static Optional<Charset> named(String label) {
        String name = label.strip().replace("\"", "").toLowerCase(Locale.ROOT);
        if (name.equals("iso-8859-1") || name.equals("us-ascii") || name.equals("latin1")) {
            return Optional.of(WESTERN);
        }
        try {
            return Optional.of(Charset.forName(name));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            return Optional.empty();
        }
    }

    /** Decodes with the labelled charset where it is known and not plain ASCII; else UTF-8 if the bytes are valid, else Western. */
    static String decode(byte[] bytes, Optional<String> label) {
        Optional<Charset> charset = label.flatMap(Charsets::named);
        if (charset.isPresent() && !charset.get().equals(WESTERN)) {
            return new String(bytes, charset.get());
        }
        return label.isPresent() && charset.isPresent() && !isAscii(label.get())
                ? new String(bytes, WESTERN)
                : unlabelled(bytes);
    }

    /** UTF-8 if the bytes are valid UTF-8, else Western. */
    static String unlabelled(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, WESTERN);
        }
    }

    private static boolean isAscii(String label) {
        return label.strip().toLowerCase(Locale.ROOT).equals("us-ascii");
    }
}
