package org.tidegate.message;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Splits a message into its parts without copying them (RFC 2046 §5.1), whatever is wrong with the boundaries. */
final class MimeTree {

    private final Limits limits;
    private final List<Problem> problems;
    private int partsLeft;

    MimeTree(Limits limits, List<Problem> problems) {
        this.limits = limits;
        this.problems = problems;
        this.partsLeft = limits.parts();
    }

    /** The tree of one message; {@code prefix} is the path of what it lies in, ending in a slash, or empty. */
    Part read(Slice message, String prefix) {
        return part(message, prefix, "", "text/plain", 0);
    }

    private Part part(Slice entity, String prefix, String number, String defaultType, int depth) {
        String path = prefix + number;
        HeaderSection header = HeaderSection.read(entity, path.isEmpty() ? "header" : path, limits, problems);
        Parameters type = Parameters.parse(header.first("content-type"));
        Parameters known = type.value().contains("/") ? type : new Parameters(defaultType, type.named());
        Parameters disposition = Parameters.parse(header.first("content-disposition"));
        List<Part> children = known.value().startsWith("multipart/")
                ? children(header.body(), known, prefix, number, depth)
                : List.of();
        if (!children.isEmpty() || !known.value().startsWith("multipart/")) {
            String leaf = children.isEmpty() && number.isEmpty() ? prefix + "1" : path;
            return new Part(leaf, header, known, disposition, children);
        }
        return new Part(
                number.isEmpty() ? prefix + "1" : path,
                header,
                new Parameters("text/plain", Map.of()),
                disposition,
                List.of());
    }

    private List<Part> children(Slice body, Parameters type, String prefix, String number, int depth) {
        String place = prefix + (number.isEmpty() ? "body" : number);
        if (depth >= limits.depth()) {
            problems.add(new Problem(
                    Problem.Kind.OVER_LIMIT, place, "Parts are nested deeper than " + limits.depth() + " levels."));
            return List.of();
        }
        Optional<byte[]> boundary = boundary(body, type);
        List<Slice> slices = boundary.isEmpty() ? List.of() : split(body, boundary.get(), place);
        if (slices.isEmpty()) {
            problems.add(new Problem(
                    Problem.Kind.MALFORMED, place, "A multipart without its boundary; read as plain text."));
        }
        String defaultType = type.value().equals("multipart/digest") ? "message/rfc822" : "text/plain";
        List<Part> parts = new ArrayList<>();
        for (Slice slice : slices) {
            String child = (number.isEmpty() ? "" : number + ".") + (parts.size() + 1);
            parts.add(part(slice, prefix, child, defaultType, depth + 1));
        }
        return List.copyOf(parts);
    }

    /** The declared boundary, else the first line that looks like one. */
    private static Optional<byte[]> boundary(Slice body, Parameters type) {
        Optional<byte[]> declared =
                type.get("boundary").map(b -> ("--" + b.stripTrailing()).getBytes(StandardCharsets.UTF_8));
        if (declared.isPresent()) {
            return declared;
        }
        for (int at = body.from(); at < body.to(); at = body.nextLine(at)) {
            int end = body.lineEnd(at, body.nextLine(at));
            if (end - at > 3
                    && end - at < 200
                    && body.at(at) == '-'
                    && body.at(at + 1) == '-'
                    && body.at(at + 2) != ' ') {
                return Optional.of(Arrays.copyOfRange(body.bytes(), at, end));
            }
        }
        return Optional.empty();
    }

    private List<Slice> split(Slice body, byte[] delimiter, String place) {
        List<Slice> slices = new ArrayList<>();
        int start = -1;
        boolean closed = false;
        int at = body.from();
        while (at < body.to() && !closed) {
            int next = body.nextLine(at);
            if (isDelimiter(body, at, next, delimiter)) {
                if (start >= 0) {
                    slices.add(body.between(start, withoutLastBreak(body, start, at)));
                }
                closed = isClosing(body, at, next, delimiter);
                start = closed ? -1 : next;
                if (--partsLeft < 0) {
                    problems.add(new Problem(
                            Problem.Kind.OVER_LIMIT,
                            place,
                            "More than " + limits.parts() + " parts; the rest was not read."));
                    return slices;
                }
            }
            at = next;
        }
        if (start >= 0 && start < body.to()) {
            problems.add(new Problem(Problem.Kind.MALFORMED, place, "The closing boundary is missing."));
            slices.add(body.between(start, body.to()));
        }
        return slices;
    }

    private static boolean isDelimiter(Slice body, int at, int next, byte[] delimiter) {
        if (next - at < delimiter.length
                || !Arrays.equals(body.bytes(), at, at + delimiter.length, delimiter, 0, delimiter.length)) {
            return false;
        }
        int rest = at + delimiter.length;
        rest += isClosing(body, at, next, delimiter) ? 2 : 0;
        while (rest < next && body.at(rest) <= ' ' && body.at(rest) >= 0) {
            rest++;
        }
        return rest == next;
    }

    private static boolean isClosing(Slice body, int at, int next, byte[] delimiter) {
        int rest = at + delimiter.length;
        return rest + 1 < next && body.at(rest) == '-' && body.at(rest + 1) == '-';
    }

    /** RFC 2046 §5.1.1: the line break before a delimiter belongs to it. */
    private static int withoutLastBreak(Slice body, int start, int at) {
        int end = at;
        if (end > start && body.at(end - 1) == '\n') {
            end--;
        }
        if (end > start && end < at && body.at(end - 1) == '\r') {
            end--;
        }
        return end;
    }
}
