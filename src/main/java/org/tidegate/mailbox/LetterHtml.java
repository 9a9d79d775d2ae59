package org.tidegate.mailbox;

import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A letter's text as HTML, the part that goes out beside it: nothing in it but what the text says, so it may be shown as it is. */
public final class LetterHtml {

    private static final Pattern PARAGRAPHS = Pattern.compile("\\R{2,}");

    private LetterHtml() {}

    /**
     * @param language BCP 47
     * @param subject one line
     * @param text paragraphs parted by empty lines
     * @return a whole document
     */
    public static String of(String language, String subject, String text) {
        String paragraphs = PARAGRAPHS
                .splitAsStream(text.strip())
                .map(p -> "<p>" + escaped(p).replaceAll("\\R", "<br>\n") + "</p>")
                .collect(Collectors.joining("\n"));
        return "<!DOCTYPE html>\n<html lang=\"" + escaped(language) + "\"><head><meta charset=\"utf-8\"><title>"
                + escaped(subject)
                + "</title></head>\n<body style=\"font-family: sans-serif; line-height: 1.5\">\n"
                + paragraphs + "\n</body></html>\n";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
