package org.tidegate.console;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.tidegate.casework.QueueRow;
import org.tidegate.finding.Discrepancy;
import org.tidegate.work.Lane;
import org.tidegate.work.SubmissionState;

/** The queue as the page shows it. */
final class QueuePage {

    /** A bar is full with this much time left. */
    private static final Duration FULL = Duration.ofMinutes(30);

    private static final int LONG_REASON = 120;

    private QueuePage() {}

    /** A lane with its rows. */
    record LaneView(String title, String hint, List<RowView> rows) {}

    /** One row; {@code level} is the part of its time that is left, in tenths. */
    record RowView(
            String link,
            String number,
            String who,
            String test,
            boolean urgent,
            List<String> reasons,
            String suggestion,
            String due,
            String left,
            int level,
            boolean over) {}

    static List<LaneView> of(List<QueueRow> rows, Instant now, PageWords words) {
        List<LaneView> lanes = new ArrayList<>();
        lanes.add(lane(
                "Urgent words",
                "A person may need help now. Call, do not only write.",
                rows,
                QueueRow::urgent,
                now,
                words));
        lanes.add(held(
                "Can still be saved",
                "A correction still counts if it is asked for now.",
                rows,
                Lane.SAVABLE,
                now,
                words));
        lanes.add(held(
                "To be answered",
                "Nothing can be saved here, but an answer is promised.",
                rows,
                Lane.REST,
                now,
                words));
        lanes.add(held("Overdue", "The promised answer is late.", rows, Lane.OVERDUE, now, words));
        lanes.add(held("Letters from people", "Neither photo nor test time.", rows, Lane.CORRESPONDENCE, now, words));
        lanes.add(lane(
                "To be read",
                "Everything adds up; a trained reader reads the cassette.",
                rows,
                r -> !r.urgent() && r.state() == SubmissionState.TO_READ,
                now,
                words));
        return lanes.stream().filter(l -> !l.rows().isEmpty()).toList();
    }

    private static LaneView held(
            String title, String hint, List<QueueRow> rows, Lane lane, Instant now, PageWords words) {
        return lane(
                title,
                hint,
                rows,
                r -> !r.urgent() && r.state() != SubmissionState.TO_READ && r.lane() == lane,
                now,
                words);
    }

    private static LaneView lane(
            String title, String hint, List<QueueRow> rows, Predicate<QueueRow> in, Instant now, PageWords words) {
        return new LaneView(
                title,
                hint,
                rows.stream().filter(in).map(r -> row(r, now, words)).toList());
    }

    private static RowView row(QueueRow r, Instant now, PageWords words) {
        Duration left = Duration.between(now, r.due());
        int level = (int) Math.max(0, Math.min(10, Math.ceil(10.0 * left.toSeconds() / FULL.toSeconds())));
        return new RowView(
                "/submissions/" + r.id().value(),
                r.id().toString(),
                r.who(),
                r.test().orElse("no test found"),
                r.urgent(),
                r.holds().stream().map(QueuePage::gist).toList(),
                r.suggestion().map(QueuePage::action).orElse(""),
                words.clock(r.due()),
                words.left(r.due(), now),
                level,
                left.isNegative());
    }

    /** The reason without its proof, which stands on the submission's own page. */
    private static String gist(Discrepancy d) {
        int proof = d.reason().indexOf(": ");
        return d.reason().length() > LONG_REASON && proof > 0 ? d.reason().substring(0, proof) : d.reason();
    }

    private static String action(String suggestion) {
        return switch (suggestion) {
            case "ask" -> "Ask the participant: the letter is ready";
            case "explain" -> "Explain: the letter is ready";
            default -> suggestion;
        };
    }
}
