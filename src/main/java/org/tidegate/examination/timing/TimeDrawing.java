package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tidegate.finding.Clue;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.DerivationStep;

/**
 * A judgement drawn: one lane for each clock, the reading window as a hatched band, the limit of sending as a dashed line, each clue as
 * an interval, those of the deciding chain filled. Legible in black and white; {@link #text} says the same.
 */
public final class TimeDrawing {

    private static final int LEFT = 230;
    private static final int WIDTH = 900;
    private static final int LANE = 34;
    private static final int TOP = 46;
    private static final Duration MARGIN = Duration.ofMinutes(5);
    private static final Duration FURTHEST = Duration.ofHours(3);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private final TimeJudgement judgement;
    private final List<DrawnClue> clues;
    private final ZoneId zone;
    private final Instant start;
    private final Instant end;

    /**
     * @param clues as {@link TimeJudge#clues} gives them
     * @param zone the clinic's
     */
    public TimeDrawing(TimeJudgement judgement, List<Clue> clues, ZoneId zone) {
        this.judgement = judgement;
        this.zone = zone;
        Set<String> deciding = Stream.concat(judgement.photo().stream(), Stream.of(judgement.sent()))
                .map(WindowVerdict::derivation)
                .flatMap(List::stream)
                .map(DerivationStep::clue)
                .collect(Collectors.toSet());
        this.clues = clues.stream()
                .flatMap(c -> DrawnClue.of(c, deciding.contains(c.place())).stream())
                .toList();
        Instant from = judgement.windows().from();
        Instant until = judgement.windows().sendBy();
        this.start = ends(from.minus(FURTHEST), until.plus(FURTHEST))
                .min(Instant::compareTo)
                .filter(t -> t.isBefore(from))
                .orElse(from)
                .minus(MARGIN);
        this.end = ends(from.minus(FURTHEST), until.plus(FURTHEST))
                .max(Instant::compareTo)
                .filter(t -> t.isAfter(until))
                .orElse(until)
                .plus(MARGIN);
    }

    private Stream<Instant> ends(Instant from, Instant to) {
        return clues.stream()
                .flatMap(c -> Stream.concat(c.from().stream(), c.to().stream()))
                .filter(t -> t.isAfter(from) && t.isBefore(to));
    }

    /** The drawing as an SVG document. */
    public String svg() {
        List<String> lanes = clues.stream().map(DrawnClue::lane).distinct().toList();
        int height = TOP + lanes.size() * LANE + 30;
        StringBuilder svg = new StringBuilder();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 ")
                .append(LEFT + WIDTH + 20)
                .append(' ')
                .append(height)
                .append("\" font-family=\"sans-serif\" font-size=\"12\"><title>")
                .append("What each clock says</title><desc>")
                .append(escaped(text()))
                .append("</desc><defs><pattern id=\"window\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\">")
                .append("<path d=\"M0 6L6 0\" stroke=\"#888\"/></pattern></defs>");
        window(svg, height);
        for (int i = 0; i < lanes.size(); i++) {
            lane(svg, lanes.get(i), TOP + i * LANE);
        }
        return svg.append("</svg>\n").toString();
    }

    private void window(StringBuilder svg, int height) {
        int from = x(judgement.windows().from());
        int until = x(judgement.windows().until());
        int limit = x(judgement.windows().sendBy());
        svg.append("<rect x=\"%d\" y=\"24\" width=\"%d\" height=\"%d\" fill=\"url(#window)\" stroke=\"#444\"/>"
                .formatted(from, until - from, height - 34));
        svg.append("<path d=\"M%d 24V%d\" stroke=\"#000\" stroke-dasharray=\"6 4\"/>".formatted(limit, height - 10));
        label(
                svg,
                from,
                18,
                "photograph " + clock(judgement.windows().from()) + "–"
                        + clock(judgement.windows().until()));
        label(svg, limit, 18, "send by " + clock(judgement.windows().sendBy()));
    }

    private void lane(StringBuilder svg, String lane, int y) {
        label(svg, 4, y + 14, lane);
        svg.append("<path d=\"M%d %dH%d\" stroke=\"#bbb\"/>".formatted(LEFT, y + 20, LEFT + WIDTH));
        clues.stream().filter(c -> c.lane().equals(lane)).forEach(c -> interval(svg, c, y));
    }

    private void interval(StringBuilder svg, DrawnClue c, int y) {
        int from = c.from().map(this::x).orElse(LEFT);
        int to = c.to().map(this::x).orElse(LEFT + WIDTH);
        String look = c.deciding() ? "fill=\"#000\"" : "fill=\"#fff\" stroke=\"#000\"";
        svg.append("<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"8\" %s/>"
                .formatted(from, y + 16, Math.max(3, to - from), look));
        label(
                svg,
                x(c.anchor()),
                y + 13,
                c.what() + " " + clock(c.anchor()) + (drawable(c.anchor()) ? "" : " (off the scale)"));
    }

    /** The same in words: a line a clue, the deciding ones marked. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (DrawnClue c : clues) {
            text.append(c.lane()).append(": ").append(c.what()).append(' ').append(span(c));
            text.append(c.deciding() ? " (decides)\n" : "\n");
        }
        return text.append("photograph from ")
                .append(clock(judgement.windows().from()))
                .append(" to ")
                .append(clock(judgement.windows().until()))
                .append(", send by ")
                .append(clock(judgement.windows().sendBy()))
                .append('\n')
                .toString();
    }

    private String span(DrawnClue c) {
        Optional<String> from = c.from().map(this::clock);
        Optional<String> to = c.to().map(this::clock);
        if (from.equals(to)) {
            return from.map(t -> "at " + t).orElse("at any time");
        }
        return from.map(t -> "from " + t).orElse("") + to.map(t -> " to " + t).orElse(" on");
    }

    private boolean drawable(Instant time) {
        return !time.isBefore(start) && !time.isAfter(end);
    }

    private int x(Instant time) {
        double part = (double) Duration.between(start, time).toMillis()
                / Duration.between(start, end).toMillis();
        return LEFT + (int) Math.round(WIDTH * Math.min(1, Math.max(0, part)));
    }

    private String clock(Instant time) {
        return TIME.format(LocalDateTime.ofInstant(time, zone));
    }

    private static void label(StringBuilder svg, int x, int y, String words) {
        svg.append("<text x=\"%d\" y=\"%d\">".formatted(x, y))
                .append(escaped(words))
                .append("</text>");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
