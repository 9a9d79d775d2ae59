package org.tidegate.message;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Received lines (RFC 5321 §4.4) and Authentication-Results (RFC 8601). */
final class TraceReader {

    private static final Pattern FROM = Pattern.compile("^\\s*from\\s+(\\S+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern BY = Pattern.compile("\\bby\\s+([A-Za-z0-9._:\\[\\]-]+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern WITH = Pattern.compile("\\bwith\\s+([A-Za-z0-9-]+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern ADDRESS =
            Pattern.compile("\\[(?:IPv6:)?([0-9a-f.:]*[0-9a-f])\\]", Pattern.CASE_INSENSITIVE);
    private static final Pattern RESULT =
            Pattern.compile("^\\s*([a-z0-9-]+)(?:/\\d+)?\\s*=\\s*([a-z]+)(.*)$", Pattern.CASE_INSENSITIVE);
    private static final Pattern DOMAIN =
            Pattern.compile("\\b(?:header\\.(?:from|d|i)|smtp\\.mailfrom)\\s*=\\s*\"?(?:[^\\s@\";]*@)?([^\\s\";]+)");

    private TraceReader() {}

    static List<TraceHop> hops(Headers headers) {
        List<TraceHop> hops = new ArrayList<>();
        for (Headers.Field field : headers.all("Received")) {
            hops.add(hop(hops.size(), field.value()));
        }
        return List.copyOf(hops);
    }

    /** The observed peer stands in brackets inside the comment behind the HELO name; a bracketed HELO is what the sender claims. */
    static TraceHop hop(int position, String line) {
        int semicolon = line.lastIndexOf(';');
        String route = semicolon < 0 ? line : line.substring(0, semicolon);
        Optional<String> helo = find(FROM, route);
        return new TraceHop(
                position,
                helo,
                peer(route, helo),
                find(BY, HeaderDates.withoutComments(route)),
                find(WITH, HeaderDates.withoutComments(route)),
                HeaderDates.parse(semicolon < 0 ? "" : line.substring(semicolon + 1)),
                line);
    }

    private static Optional<String> peer(String route, Optional<String> helo) {
        int by = route.toLowerCase(Locale.ROOT).indexOf(" by ");
        String from = by < 0 ? route : route.substring(0, by);
        int comment = from.indexOf('(');
        Optional<String> seen = comment < 0 ? Optional.empty() : find(ADDRESS, from.substring(comment));
        return seen.or(() -> comment < 0 ? helo.flatMap(h -> find(ADDRESS, h)) : Optional.empty());
    }

    private static Optional<String> find(Pattern pattern, String text) {
        Matcher m = pattern.matcher(text);
        return m.find() ? Optional.of(m.group(1)) : Optional.empty();
    }

    static List<AuthenticationResult> authentication(Headers headers) {
        List<AuthenticationResult> results = new ArrayList<>();
        for (Headers.Field field : headers.all("Authentication-Results")) {
            int above = (int) headers.all("Received").stream()
                    .filter(r -> r.position() < field.position())
                    .count();
            String[] parts = HeaderDates.withoutComments(field.value()).split(";", -1);
            String authserv = parts[0].strip().split("\\s+", 2)[0].toLowerCase(Locale.ROOT);
            for (int i = 1; i < parts.length; i++) {
                Matcher m = RESULT.matcher(parts[i].strip());
                if (m.matches()) {
                    results.add(new AuthenticationResult(
                            field.position(),
                            above,
                            authserv,
                            m.group(1).toLowerCase(Locale.ROOT),
                            m.group(2).toLowerCase(Locale.ROOT),
                            find(DOMAIN, m.group(3))));
                }
            }
        }
        return List.copyOf(results);
    }
}
