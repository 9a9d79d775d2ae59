package org.tidegate.examination.timing;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Clue;
import org.tidegate.finding.Event;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.DerivationStep;
import org.tidegate.rules.TimingRules;

/**
 * A judgement drawn: one lane for each clock, the reading window as a hatched band, the limit of sending as a dashed line, each clue as
 * an interval, those of the deciding chain black and bold. Legible in black and white; {@link #text} says the same.
 *
 * <p>A page shows it so: {@code assessor.timeCase(input, assessment)} gives the evidence of an assessment, {@code
 * TimeDrawing.of(timeCase, assessment.time().orElseThrow(), rules.timing())} the drawing; {@code svg(900)} fits a desk, {@code svg(360)} a
 * phone (put both into the page and let a media query show one), {@code text()} belongs below or into the page for those who do not see
 * it. The SVG is well-formed XML with all text escaped and no script; its ids end in its width.
 */
public final class TimeDrawing {

    private static final int SIZE = 12;
    private static final int HEADER = 40;
    private static final int LANE = 20;
    private static final int ROW = 20;
    private static final int AXIS = 26;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final TimeJudgement judgement;
    private final List<DrawnClue> clues;
    private final ZoneId zone;
    private final DrawingWords words;

    TimeDrawing(TimeJudgement judgement, List<DrawnClue> clues, ZoneId zone, DrawingWords words) {
        this.judgement = judgement;
        this.clues = List.copyOf(clues);
        this.zone = zone;
        this.words = words;
    }

    /** @param judgement as {@link TimeJudge} gave it for the case under the same rules */
    public static TimeDrawing of(TimeCase c, TimeJudgement judgement, TimingRules rules) {
        return new TimeDrawing(judgement, drawn(c, judgement, rules), rules.zone(), DrawingWords.ENGLISH);
    }

    static List<DrawnClue> drawn(TimeCase c, TimeJudgement judgement, TimingRules rules) {
        List<DerivationStep> proofs = Stream.concat(judgement.photo().stream(), Stream.of(judgement.sent()))
                .map(WindowVerdict::derivation)
                .flatMap(List::stream)
                .toList();
        return new TimeJudge(rules)
                .clues(c, judgement.governing()).stream()
                        .flatMap(clue ->
                                DrawnClue.of(clue, proofs.stream().anyMatch(step -> uses(step, clue))).stream())
                        .sorted(Comparator.comparing(TimeDrawing::lane))
                        .toList();
    }

    /** As things went: the test, the photo, the mail's journey, our clock. */
    private static int lane(DrawnClue c) {
        return switch (c.clock().kind()) {
            case CLINIC -> 0;
            case WORDS -> 1;
            case PHONE -> 2;
            case SATELLITE -> 3;
            case OTHER_SERVER ->
                4 + (c.event().kind() == Event.Kind.SIGNED ? 1_000 : c.event().index());
            case OWN_SERVER -> Integer.MAX_VALUE;
        };
    }

    private static boolean uses(DerivationStep step, Clue clue) {
        boolean upper = clue.hi().isPresent()
                && step.from().equals(clue.earlier())
                && step.to().equals(clue.later());
        boolean lower = clue.lo().isPresent()
                && step.from().equals(clue.later())
                && step.to().equals(clue.earlier());
        boolean softens = step.from().equals(Event.EPOCH) && step.to().equals(Event.SENT);
        return step.clue().equals(clue.place()) && (upper || lower || softens);
    }

    /** The drawing as an SVG document, {@code width} pixels wide. */
    public String svg(int width) {
        Drawing body = new Drawing();
        int height = draw(body, width);
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\""
                        .formatted(width, height, width, height)
                + " font-family=\"sans-serif\"><title>What each clock says</title><desc>" + Svg.escaped(text())
                + "</desc><rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>"
                + Svg.body(body, Integer.toString(width)) + "</svg>\n";
    }

    /** Draws into a page; returns the height used. */
    int draw(Drawing on, int width) {
        TimeScale scale = TimeScale.of(judgement.windows(), clues, width);
        List<LaneRows> lanes = lanes(scale);
        int height = HEADER + lanes.stream().mapToInt(TimeDrawing::height).sum() + AXIS;
        window(on, scale, height - AXIS);
        int y = HEADER;
        for (LaneRows lane : lanes) {
            lane(on, scale, lane, y);
            y += height(lane);
        }
        axis(on, scale, y);
        return height;
    }

    private static int height(LaneRows lane) {
        return LANE + lane.rows().size() * ROW;
    }

    private void window(Drawing on, TimeScale scale, int bottom) {
        TimeJudgement.ClockTimes w = judgement.windows();
        int from = scale.x(w.from());
        int limit = scale.x(w.sendBy());
        on.box(from, HEADER - 4, scale.x(w.until()) - from, bottom - HEADER + 4, Drawing.Fill.HATCHED);
        on.line(limit, HEADER - 4, limit, bottom, Drawing.Pen.LIMIT);
        on.label(from, 14, SIZE, true, words.photograph(edge(w.from()), edge(w.until())), scale.width());
        on.label(limit, 30, SIZE, true, words.sendBy(edge(w.sendBy())), scale.width());
    }

    private void lane(Drawing on, TimeScale scale, LaneRows lane, int y) {
        on.line(0, y, scale.width(), y, Drawing.Pen.PALE);
        on.text(0, y + 14, SIZE, false, lane.name());
        int top = y + LANE;
        for (List<LaneRows.Placed> row : lane.rows()) {
            for (LaneRows.Placed p : row) {
                interval(on, p, top);
            }
            top += ROW;
        }
    }

    private static void interval(Drawing on, LaneRows.Placed p, int y) {
        boolean deciding = p.clue().deciding();
        Drawing.Fill look = deciding ? Drawing.Fill.BLACK : Drawing.Fill.WHITE;
        on.box(p.from(), y + 3, Math.max(4, p.to() - p.from()), 10, look);
        on.text(p.label(), y + 13, SIZE, deciding, p.words());
    }

    private void axis(Drawing on, TimeScale scale, int y) {
        on.line(0, y, scale.width(), y, Drawing.Pen.DARK);
        for (Instant tick : scale.ticks()) {
            int x = scale.x(tick);
            on.line(x, y, x, y + 5, Drawing.Pen.DARK);
            String minute = MINUTE.format(LocalDateTime.ofInstant(tick, zone));
            int start =
                    Math.max(0, Math.min(scale.width() - TextFit.width(minute, 11), x - TextFit.width(minute, 11) / 2));
            on.text(start, y + 18, 11, false, minute);
        }
    }

    private List<LaneRows> lanes(TimeScale scale) {
        List<String> names =
                clues.stream().map(c -> words.lane(c.clock())).distinct().toList();
        List<LaneRows> lanes = new ArrayList<>();
        for (String name : names) {
            List<DrawnClue> own = clues.stream()
                    .filter(c -> words.lane(c.clock()).equals(name))
                    .sorted(Comparator.comparing(DrawnClue::anchor))
                    .toList();
            lanes.add(LaneRows.of(name + wrongBy(own.get(0).clock()), own, scale, c -> label(c, scale)));
        }
        return lanes;
    }

    private String wrongBy(Clock clock) {
        return judgement
                .phoneClock()
                .filter(e -> clock.kind() == Clock.Kind.PHONE && e.phone().equals(clock.name()))
                .map(words::wrongBy)
                .orElse("");
    }

    private String label(DrawnClue c, TimeScale scale) {
        String times = c.isPoint() ? clock(c.anchor()) : range(c);
        String off = scale.holds(c.anchor()) ? "" : c.anchor().isBefore(scale.start()) ? "← " : " →";
        return off.startsWith("←")
                ? off + words.event(c.event()) + " " + times
                : words.event(c.event()) + " " + times + off;
    }

    private String range(DrawnClue c) {
        return c.from().map(this::clock).orElse("…") + "–"
                + c.to().map(this::clock).orElse("…");
    }

    /** The same in words: a line a clue, the deciding ones marked. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (DrawnClue c : clues) {
            text.append(words.lane(c.clock()))
                    .append(": ")
                    .append(words.event(c.event()))
                    .append(' ')
                    .append(span(c));
            text.append(c.deciding() ? " (decides)\n" : "\n");
        }
        judgement.phoneClock().ifPresent(e -> text.append(e.words()).append('\n'));
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
        if (c.isPoint()) {
            return "at " + clock(c.anchor());
        }
        Optional<String> from = c.from().map(this::clock);
        Optional<String> to = c.to().map(this::clock);
        return (from.map(t -> "from " + t).orElse("") + to.map(t -> " to " + t).orElse(" on")).strip();
    }

    /** An edge of a window: seconds only where there are some. */
    private String edge(Instant time) {
        return (time.getEpochSecond() % 60 == 0 ? MINUTE : TIME).format(LocalDateTime.ofInstant(time, zone));
    }

    private String clock(Instant time) {
        return TIME.format(LocalDateTime.ofInstant(time, zone));
    }
}
