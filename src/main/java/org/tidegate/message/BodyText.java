package org.tidegate.message;

import java.util.List;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** The words of a message: plain text where there is some, else the HTML rendered to text. */
final class BodyText {

    private final Limits limits;
    private final List<Problem> problems;

    BodyText(Limits limits, List<Problem> problems) {
        this.limits = limits;
        this.problems = problems;
    }

    /** Text of the part and all below it, at most {@link Limits#textChars()} characters. */
    String of(Part root) {
        String text = words(root)
                .replace("\r\n", "\n")
                .replace('\r', '\n')
                .replace("\u0000", "")
                .strip();
        if (text.length() <= limits.textChars()) {
            return text;
        }
        problems.add(new Problem(
                Problem.Kind.OVER_LIMIT,
                root.path(),
                "The text is longer than " + limits.textChars() + " characters; cut."));
        return text.substring(0, limits.textChars());
    }

    private String words(Part part) {
        if (part.type().value().equals("multipart/alternative")) {
            return part.children().stream()
                    .sorted((a, b) -> Boolean.compare(isHtml(a), isHtml(b)))
                    .map(this::words)
                    .filter(text -> !text.isBlank())
                    .findFirst()
                    .orElse("");
        }
        if (part.isMultipart()) {
            return part.children().stream()
                    .map(this::words)
                    .filter(text -> !text.isBlank())
                    .collect(Collectors.joining("\n"));
        }
        return part.isBodyText() ? leaf(part) : "";
    }

    private static boolean isHtml(Part part) {
        return part.type().value().equals("text/html") || part.type().value().equals("multipart/related");
    }

    private String leaf(Part part) {
        // Four encoded bytes a character at most, with room for markup: what lies beyond cannot matter.
        int bound = (int) Math.min(Integer.MAX_VALUE, 40L * limits.textChars());
        Slice body = part.header().body();
        Slice kept = body.between(body.from(), Math.min(body.to(), body.from() + bound));
        byte[] bytes = TransferEncoding.decode(
                kept, part.header().first("content-transfer-encoding").orElse(""), part.path(), problems);
        part.type()
                .get("charset")
                .filter(c -> Charsets.named(c).isEmpty())
                .ifPresent(c -> problems.add(new Problem(
                        Problem.Kind.MALFORMED, part.path(), "The character set \"" + c + "\" is not known.")));
        String text = Charsets.decode(bytes, part.type().get("charset"));
        return part.type().value().equals("text/html") ? plain(text) : text;
    }

    /** HTML as text: block elements end a line, scripts and styles are dropped. */
    static String plain(String html) {
        Document document = Jsoup.parse(html);
        document.select("script,style,head").remove();
        for (Element element : document.select("br,p,div,li,tr,h1,h2,h3,h4,blockquote")) {
            element.after("\n");
        }
        return document.wholeText()
                .replaceAll("[ \\t\\u00a0]+", " ")
                .replaceAll(" ?\\n\\s*", "\n")
                .strip();
    }
}
