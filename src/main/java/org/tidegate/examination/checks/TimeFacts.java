package org.tidegate.examination.checks;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tidegate.examination.timing.TimeJudgement;
import org.tidegate.examination.timing.VerdictText;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;

/** The verdicts on time, as facts. */
final class TimeFacts {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private TimeFacts() {}

    static void add(CheckInput in, FactSheet sheet) {
        Optional<TimeJudgement> time = in.time();
        sheet.fact(
                "photo_verdict",
                time.flatMap(TimeJudgement::photo).map(w -> w.verdict().code()).orElse("none"));
        sheet.fact("sent_verdict", time.map(t -> t.sent().verdict().code()).orElse("none"));
        sheet.fact(
                "photo_side",
                time.flatMap(TimeJudgement::side)
                        .map(s -> s.name().toLowerCase(Locale.ROOT))
                        .orElse("none"));
        sheet.fact("sent_softened", time.map(TimeJudgement::sentSoftened).orElse(false));
        sheet.fact("outage", time.map(TimeJudgement::outage).orElse(false));
        sheet.fact("conflict", time.flatMap(TimeJudgement::conflict).isPresent());
        sheet.fact(
                "conflict_decides",
                time.flatMap(TimeJudgement::conflict).map(c -> c.decides()).orElse(false));
        sheet.fact("stated_differs", time.flatMap(TimeJudgement::statedDiffers).isPresent());
        time.ifPresent(t -> figures(t, in.rules().timing().zone(), sheet));
    }

    private static void figures(TimeJudgement time, ZoneId zone, FactSheet sheet) {
        sheet.figure("photograph_from", clock(time.windows().from(), zone));
        sheet.figure("photograph_until", clock(time.windows().until(), zone));
        sheet.figure("send_by", clock(time.windows().sendBy(), zone));
        time.photo().ifPresent(p -> sheet.figure("photo_why", why(p)));
        sheet.figure("sent_why", why(time.sent()));
        sheet.figure("open_why", open(time));
        time.conflict().ifPresent(c -> sheet.figure("conflict", c.words()));
        time.statedDiffers().ifPresent(words -> sheet.figure("stated_why", words));
        sheet.figure("phone_clock", time.phoneClock().map(c -> c.words()).orElse(""));
    }

    private static String clock(Instant time, ZoneId zone) {
        return CLOCK.format(time.atZone(zone));
    }

    /** What the proof concludes; where only the participant's words tell when the test began, whom to ask. */
    private static String why(WindowVerdict v) {
        boolean words = v.assumptions().stream().anyMatch(a -> a.name().equals("stated-is-timer"));
        String gist = VerdictText.gist(v).isEmpty() ? "no clock bounds it." : VerdictText.gist(v);
        return v.verdict() == Verdict.OUTSIDE && words
                ? gist + " Only the participant's words tell when the test began: ask when the drops went in."
                : gist;
    }

    private static String open(TimeJudgement time) {
        return Stream.concat(time.photo().stream(), Stream.of(time.sent()))
                .filter(v -> v.verdict() == Verdict.UNDETERMINED)
                .map(TimeFacts::why)
                .collect(Collectors.joining(" "));
    }
}
