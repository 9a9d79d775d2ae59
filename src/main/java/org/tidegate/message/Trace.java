package org.tidegate.message;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code Received} lines (RFC 5321 §4.4) as the many mail servers write them. */
final class Trace {

    private static final Pattern FROM = Pattern.compile("^\\s*from\\s+(\\S+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern BY = Pattern.compile("(?:^|\\s)by\\s+([^\\s;]+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern WITH = Pattern.compile("(?:^|\\s)with\\s+([^\\s;]+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern BY_AFTER_COMMENT = Pattern.compile("[\\s)]by\\s", Pattern.CASE_INSENSITIVE);
    private static final String IP = "(?:IPv6:)?([0-9A-Fa-f:.]{3,45})";
    private static final Pattern BRACKETED = Pattern.compile("\\[" + IP + "(?:%\\w+)?\\]", Pattern.CASE_INSENSITIVE);
    private static final Pattern BARE = Pattern.compile("\\(" + IP + "\\)");
    /** A name that the peer gave itself inside a comment: {@code helo=[10.0.0.1]}, {@code (HELO [10.0.0.1])}. */
    private static final Pattern HELO_IN_COMMENT =
            Pattern.compile("\\b(?:helo|ehlo)[\\s=]+\\S+?(?=[\\s)]|$)", Pattern.CASE_INSENSITIVE);

    private Trace() {}

    static List<TraceHop> hops(HeaderSection header) {
        List<TraceHop> hops = new ArrayList<>();
        for (Field field : header.all("received")) {
            hops.add(hop(hops.size(), field.value()));
        }
        return List.copyOf(hops);
    }

    static TraceHop hop(int position, String line) {
        int semicolon = lastSemicolonOutsideComments(line);
        String clauses = semicolon < 0 ? line : line.substring(0, semicolon);
        String words = Comments.strip(clauses);
        return new TraceHop(
                position,
                group(FROM, words),
                peer(clauses),
                group(BY, words).map(Trace::withoutTrailingDot),
                group(WITH, words),
                HeaderDates.parse(semicolon < 0 ? line : line.substring(semicolon + 1)),
                line);
    }

    /** What the receiving host saw. The first word after {@code from} is what the peer says of itself and proves nothing. */
    private static Optional<String> peer(String clauses) {
        Matcher from = FROM.matcher(clauses);
        if (!from.find()) {
            return Optional.empty();
        }
        String rest = clauses.substring(from.end());
        Matcher by = BY_AFTER_COMMENT.matcher(rest);
        String info = by.find() ? rest.substring(0, by.start() + 1) : rest;
        String observed = HELO_IN_COMMENT.matcher(info).replaceAll("");
        Optional<String> address = group(BRACKETED, observed).or(() -> group(BARE, observed));
        boolean selfNameIsInComment = !observed.equals(info);
        return address.or(() -> selfNameIsInComment ? group(BRACKETED, from.group(1)) : Optional.empty())
                .map(ip -> ip.toLowerCase(Locale.ROOT));
    }

    private static Optional<String> group(Pattern pattern, String text) {
        Matcher m = pattern.matcher(text);
        return m.find() ? Optional.of(m.group(1)) : Optional.empty();
    }

    private static String withoutTrailingDot(String host) {
        return host.endsWith(".") ? host.substring(0, host.length() - 1) : host;
    }

    private static int lastSemicolonOutsideComments(String line) {
        int depth = 0;
        int found = -1;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            depth += c == '(' ? 1 : c == ')' && depth > 0 ? -1 : 0;
            found = c == ';' && depth == 0 ? i : found;
        }
        return found;
    }
}
