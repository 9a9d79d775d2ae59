package org.tidegate.message;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeFilter;
import org.jsoup.select.NodeTraversor;

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
        // Room for encoding and markup: what lies beyond is cut with the text.
        int bound = (int) Math.min(Integer.MAX_VALUE, 10L * limits.textChars());
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
        StringBuilder out = new StringBuilder();
        NodeTraversor.filter(new Words(out), Jsoup.parse(html));
        return out.toString()
                .replace('\u00a0', ' ')
                .lines()
                .map(line -> line.replaceAll("[ \\t]+", " ").strip())
                .filter(line -> !line.isEmpty())
                .collect(Collectors.joining("\n"));
    }

    private record Words(StringBuilder out) implements NodeFilter {

        private static final Set<String> DROPPED = Set.of("script", "style", "head", "title");
        private static final Set<String> ENDS_LINE =
                Set.of("br", "p", "div", "li", "tr", "h1", "h2", "h3", "h4", "blockquote", "pre");

        @Override
        public FilterResult head(Node node, int depth) {
            if (node instanceof TextNode text) {
                // A line break in the source is white space; only elements end lines.
                out.append(text.getWholeText().replaceAll("[\\r\\n]", " "));
            }
            return DROPPED.contains(node.nodeName()) ? FilterResult.SKIP_ENTIRELY : FilterResult.CONTINUE;
        }

        @Override
        public FilterResult tail(Node node, int depth) {
            if (ENDS_LINE.contains(node.nodeName())) {
                out.append('\n');
            }
            return FilterResult.CONTINUE;
        }
    }
}
