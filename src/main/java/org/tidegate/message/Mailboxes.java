package org.tidegate.message;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads address lists (RFC 5322 §3.4), groups, comments and careless forms included. */
public final class Mailboxes {

    private final String text;
    private final List<Mailbox> found = new ArrayList<>();
    private final StringBuilder phrase = new StringBuilder();
    private String angle = "";
    private String comment = "";

    private Mailboxes(String text) {
        this.text = text;
    }

    /** The mailboxes of one field value, encoded-words decoded; anything without an {@code @} is left out. */
    public static List<Mailbox> parse(String value) {
        Mailboxes mailboxes = new Mailboxes(value);
        mailboxes.read();
        return List.copyOf(mailboxes.found);
    }

    private void read() {
        int i = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> i = quoted(i + 1);
                case '(' -> i = comment(i + 1);
                case '<' -> i = angle(i + 1);
                case ',', ';' -> end();
                case ':' -> phrase.setLength(0);
                default -> phrase.append(c);
            }
            i++;
        }
        end();
    }

    private int quoted(int start) {
        int i = start;
        while (i < text.length() && text.charAt(i) != '"') {
            i += text.charAt(i) == '\\' && i + 1 < text.length() ? 1 : 0;
            phrase.append(text.charAt(i));
            i++;
        }
        return i;
    }

    private int comment(int start) {
        int i = start;
        int depth = 1;
        StringBuilder inside = new StringBuilder();
        while (i < text.length()) {
            char c = text.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (depth == 0) {
                break;
            }
            inside.append(c);
            i++;
        }
        comment = inside.toString().strip();
        return i;
    }

    private int angle(int start) {
        int close = text.indexOf('>', start);
        int end = close < 0 ? text.length() : close;
        String inside = text.substring(start, end).strip();
        // RFC 5322 §4.4: an obsolete source route before the address is read over.
        angle = inside.startsWith("@") && inside.contains(":") ? inside.substring(inside.indexOf(':') + 1) : inside;
        return end;
    }

    private void end() {
        String words = phrase.toString().strip();
        if (angle.contains("@")) {
            found.add(new Mailbox(name(words.isEmpty() ? comment : words), angle.replaceAll("\\s", "")));
        } else if (words.contains("@")) {
            found.add(new Mailbox(name(comment), words.replaceAll("\\s", "")));
        }
        phrase.setLength(0);
        angle = "";
        comment = "";
    }

    private static Optional<String> name(String words) {
        String decoded = EncodedWords.decode(words).replaceAll("\\s+", " ").strip();
        return decoded.isEmpty() ? Optional.empty() : Optional.of(decoded);
    }
}
