package org.tidegate.cli;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.tidegate.examination.timing.GivenNetwork;
import org.tidegate.examination.timing.GivenNetwork.GivenClue;
import org.tidegate.examination.timing.GivenNetwork.GivenWindow;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Clue;
import org.tidegate.finding.Event;
import org.tidegate.finding.WindowVerdict.Check;
import tools.jackson.databind.JsonNode;

/** Reads the clues and windows of a {@code timing} question ({@code shared/schemas/timing-question.schema.json}). */
final class GivenClues {

    /** More would be no case of one submission. */
    private static final int MOST = 200;

    /** Four hundred years before or after 1970. */
    private static final Duration LONGEST = Duration.ofDays(146_097);

    private static final Pattern EVENT =
            Pattern.compile("(epoch|test|photo|sent|hop|signed|arrived|device_zero)(?:\\[(\\d{1,3})])?");
    private static final Pattern ASSUMPTION = Pattern.compile("([a-z0-9-]+)(?:\\((.*)\\))?");

    private GivenClues() {}

    static List<GivenClue> clues(JsonNode question) {
        return items(question, "clues").stream().map(GivenClues::clue).toList();
    }

    static List<GivenWindow> windows(JsonNode question) {
        return items(question, "windows").stream().map(GivenClues::window).toList();
    }

    private static GivenWindow window(JsonNode w) {
        Duration from = span(required(w, "from"));
        Duration until = span(required(w, "until"));
        inOrder("from", from, "until", until);
        return new GivenWindow(
                constant(Check.class, required(w, "check")),
                event(required(w, "earlier")),
                event(required(w, "later")),
                from,
                until,
                allowance(w, "grace"));
    }

    private static GivenClue clue(JsonNode node) {
        Event earlier = event(required(node, "earlier"));
        Event later = event(required(node, "later"));
        if (node.get("clock") == null) {
            return GivenNetwork.order(earlier, later);
        }
        Clock clock = new Clock(
                constant(Clock.Kind.class, required(node.get("clock"), "kind")),
                text(node.get("clock"), "name").orElse(""));
        Optional<Duration> lo = bound(node, "lo", earlier);
        Optional<Duration> hi = bound(node, "hi", earlier);
        if (lo.isPresent() && hi.isPresent()) {
            inOrder("lo", lo.get(), "hi", hi.get());
        }
        Clue clue = new Clue(
                earlier,
                later,
                lo,
                hi,
                clock,
                required(node, "place"),
                text(node, "words").orElse(required(node, "place")),
                leansOn(node));
        return new GivenClue(clue, allowance(node, "tolerance"));
    }

    private static void inOrder(String first, Duration least, String second, Duration most) {
        if (least.compareTo(most) > 0) {
            throw new JsonLines.BadQuestion("\"" + first + "\" lies above \"" + second + "\"");
        }
    }

    private static Duration allowance(JsonNode node, String key) {
        Duration given = text(node, key).map(GivenClues::span).orElse(Duration.ZERO);
        if (given.isNegative()) {
            throw new JsonLines.BadQuestion("\"" + key + "\" is negative");
        }
        return given;
    }

    private static Duration span(String text) {
        return within(Duration.parse(text), text);
    }

    private static Duration within(Duration span, String text) {
        if (span.abs().compareTo(LONGEST) > 0) {
            throw new JsonLines.BadQuestion("beyond " + LONGEST.toDays() + " days: " + text);
        }
        return span;
    }

    private static Optional<Duration> bound(JsonNode node, String key, Event earlier) {
        return text(node, key)
                .map(t -> earlier.equals(Event.EPOCH) && !t.contains("P")
                        ? within(
                                Duration.between(
                                        Instant.EPOCH, OffsetDateTime.parse(t).toInstant()),
                                t)
                        : span(t));
    }

    private static List<Assumption> leansOn(JsonNode node) {
        List<Assumption> assumptions = new ArrayList<>();
        JsonNode names = node.get("leans_on");
        for (int i = 0; names != null && i < names.size(); i++) {
            Matcher m = ASSUMPTION.matcher(names.get(i).asString());
            if (!m.matches()) {
                throw new JsonLines.BadQuestion("no assumption's name: " + names.get(i));
            }
            assumptions.add(new Assumption(m.group(1), m.group(2) == null ? "" : m.group(2)));
        }
        return assumptions;
    }

    private static Event event(String name) {
        Matcher m = EVENT.matcher(name);
        if (!m.matches()) {
            throw new JsonLines.BadQuestion("no event: " + name);
        }
        int index = m.group(2) == null ? 0 : Integer.parseInt(m.group(2));
        return new Event(constant(Event.Kind.class, m.group(1)), index);
    }

    private static <T extends Enum<T>> T constant(Class<T> type, String name) {
        try {
            return Enum.valueOf(type, name.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new JsonLines.BadQuestion("no " + type.getSimpleName().toLowerCase(Locale.ROOT) + ": " + name);
        }
    }

    private static List<JsonNode> items(JsonNode node, String key) {
        JsonNode items = node.get(key);
        if (items == null || !items.isArray() || items.size() > MOST) {
            throw new JsonLines.BadQuestion("\"" + key + "\" is an array of at most " + MOST);
        }
        return IntStream.range(0, items.size()).mapToObj(items::get).toList();
    }

    private static String required(JsonNode node, String key) {
        return text(node, key).orElseThrow(() -> new JsonLines.BadQuestion("\"" + key + "\" is missing"));
    }

    static Optional<String> text(JsonNode node, String key) {
        JsonNode value = node.get(key);
        return value == null || value.isNull() ? Optional.empty() : Optional.of(value.asString());
    }
}
