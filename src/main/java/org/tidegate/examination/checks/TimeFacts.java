package org.tidegate.examination.checks;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.tidegate.examination.timing.TimeJudgement;
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
        sheet.fact("stated_differs", time.map(TimeJudgement::statedDiffers).orElse(false));
        time.ifPresent(t -> figures(t, in.rules().timing().zone(), sheet));
    }

    private static void figures(TimeJudgement time, ZoneId zone, FactSheet sheet) {
        sheet.figure("photograph_from", clock(time.windows().from(), zone));
        sheet.figure("photograph_until", clock(time.windows().until(), zone));
        sheet.figure("send_by", clock(time.windows().sendBy(), zone));
        time.photo().ifPresent(p -> sheet.figure("photo_why", lastWords(p)));
        sheet.figure("sent_why", lastWords(time.sent()));
        time.conflict().ifPresent(c -> sheet.figure("conflict", c.words()));
    }

    private static String clock(Instant time, ZoneId zone) {
        return CLOCK.format(time.atZone(zone));
    }

    private static String lastWords(WindowVerdict verdict) {
        return verdict.derivation().stream()
                .map(WindowVerdict.DerivationStep::words)
                .reduce((a, b) -> a + "; " + b)
                .orElse("");
    }
}
