package org.tidegate.message;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code Authentication-Results} (RFC 8601 §2.2) and {@code DKIM-Signature} (RFC 6376 §3.5), read but not judged. */
final class Authentication {

    private static final Pattern METHOD =
            Pattern.compile("^\\s*([A-Za-z0-9-]+)\\s*(?:/\\s*\\d+\\s*)?=\\s*([A-Za-z]+)(.*)$", Pattern.DOTALL);
    private static final List<String> DOMAIN_PROPERTIES =
            List.of("header.d", "header.from", "smtp.mailfrom", "header.i", "smtp.helo");

    private Authentication() {}

    static List<AuthenticationResult> results(HeaderSection header) {
        List<AuthenticationResult> results = new ArrayList<>();
        int hopsAbove = 0;
        for (Field field : header.fields()) {
            if (field.name().equals("received")) {
                hopsAbove++;
            } else if (field.name().equals("authentication-results")) {
                results.addAll(results(field, hopsAbove));
            }
        }
        return List.copyOf(results);
    }

    private static List<AuthenticationResult> results(Field field, int hopsAbove) {
        String[] parts = Comments.strip(field.value()).split(";", -1);
        String head = parts[0].strip();
        // Some servers leave the authserv-id out and begin with a result; nobody vouches for that.
        boolean anonymous = METHOD.matcher(head).matches();
        String authservId = anonymous ? "" : head.split("\\s", -1)[0].toLowerCase(Locale.ROOT);
        List<AuthenticationResult> results = new ArrayList<>();
        for (String part : Arrays.asList(parts).subList(anonymous ? 0 : 1, parts.length)) {
            Matcher m = METHOD.matcher(part);
            if (m.matches()) {
                results.add(new AuthenticationResult(
                        field.position(),
                        hopsAbove,
                        authservId,
                        m.group(1).toLowerCase(Locale.ROOT),
                        m.group(2).toLowerCase(Locale.ROOT),
                        domain(m.group(3))));
            }
        }
        return results;
    }

    private static Optional<String> domain(String properties) {
        for (String property : DOMAIN_PROPERTIES) {
            Matcher m = Pattern.compile(
                            "(?:^|\\s)" + Pattern.quote(property) + "\\s*=\\s*\"?([^\\s\";]+)",
                            Pattern.CASE_INSENSITIVE)
                    .matcher(properties);
            if (m.find()) {
                String value = m.group(1);
                return Optional.of(value.substring(value.lastIndexOf('@') + 1).toLowerCase(Locale.ROOT));
            }
        }
        return Optional.empty();
    }

    static List<DkimSignature> signatures(HeaderSection header) {
        return header.all("dkim-signature").stream()
                .map(f -> signature(TagList.parse(f.value())))
                .toList();
    }

    private static DkimSignature signature(Map<String, String> tags) {
        List<String> signed = Arrays.stream(tags.getOrDefault("h", "").split(":", -1))
                .map(name -> name.strip().toLowerCase(Locale.ROOT))
                .filter(name -> !name.isEmpty())
                .toList();
        return new DkimSignature(
                tags.getOrDefault("d", "").toLowerCase(Locale.ROOT),
                tags.getOrDefault("s", ""),
                Optional.ofNullable(tags.get("t")).flatMap(Authentication::epoch),
                signed,
                !tags.containsKey("l"),
                false);
    }

    private static Optional<Instant> epoch(String text) {
        try {
            return Optional.of(Instant.ofEpochSecond(Long.parseLong(text)));
        } catch (NumberFormatException | DateTimeException e) {
            return Optional.empty();
        }
    }
}
