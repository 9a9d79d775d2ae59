package org.tidegate.examination.subject;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Repairs UTF-8 that somebody read as Windows-1252 (JosÃ© for José). Only where it is certain: the run of non-ASCII characters
 * is valid UTF-8 as bytes and every decoded character is a letter or a typographic mark.
 */
final class Mojibake {

    private static final Charset WINDOWS = Charset.forName("windows-1252");
    /** Longer runs are no words; without this bound a run of lead characters costs the square of its length. */
    private static final int LONGEST_RUN = 100;

    /** First bytes of Latin, Greek, Cyrillic, Arabic and typographic characters, as Windows-1252 shows them. */
    private static final String LEADS = "ÂÃÄÅÆÎÏÐÑØÙáâ";

    private Mojibake() {}

    static TracedText repair(TracedText in) {
        if (in.text().chars().noneMatch(c -> LEADS.indexOf(c) >= 0)) {
            return in;
        }
        TracedText.Rewrite out = new TracedText.Rewrite(in);
        String s = in.text();
        int i = 0;
        int end = 0;
        while (i < s.length()) {
            end = i < end ? end : runEnd(s, i);
            boolean candidate = end - i >= 2 && end - i <= LONGEST_RUN && LEADS.indexOf(s.charAt(i)) >= 0;
            Optional<String> repaired = candidate ? redecode(s.substring(i, end)) : Optional.empty();
            if (repaired.isPresent()) {
                out.append(repaired.get(), i);
                i = end;
            } else {
                out.append(s.charAt(i), i);
                i++;
            }
        }
        return out.done();
    }

    private static int runEnd(String s, int from) {
        int end = from;
        while (end < s.length() && s.charAt(end) >= 0x80) {
            end++;
        }
        return end;
    }

    private static Optional<String> redecode(String run) {
        try {
            ByteBuffer bytes = WINDOWS.newEncoder()
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .encode(CharBuffer.wrap(run));
            String decoded = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(bytes)
                    .toString();
            return decoded.codePoints().allMatch(Mojibake::plausible) ? Optional.of(decoded) : Optional.empty();
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    private static boolean plausible(int c) {
        boolean letter = Character.isLetter(c) && !(c >= 0x250 && c <= 0x2AF);
        boolean typographic = c >= 0x2010 && c <= 0x2026;
        return letter || typographic || c == 0xA0 || c == 0xB7;
    }
}
