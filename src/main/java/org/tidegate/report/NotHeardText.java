package org.tidegate.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.tidegate.booking.TestRecord;
import org.tidegate.casework.SilentTest;
import org.tidegate.casework.SilentTest.Step;
import org.tidegate.examination.timing.TestWindows;
import org.tidegate.rules.Rules;
import org.tidegate.work.SubmissionId;

/** Tests of which nothing came as plain text, without a name; times are clock times of the clinic's zone, the zone named. */
public final class NotHeardText {

    private static final Map<Step, String> NEXT = new EnumMap<>(Map.of(
            Step.REMIND, "remind while there is time",
            Step.REMINDED, "reminder written",
            Step.LOOK, "look first, this may be it",
            Step.OBSERVE, "ask the observer when the timer started",
            Step.CALL, "call, no letter reaches the person in time",
            Step.OVER, "too late for a photo",
            Step.NOT_OBSERVED, "nobody watched it, the test does not count"));

    private final String service;
    private final Clocks clocks;

    public NotHeardText(Rules rules) {
        this.service = rules.service().name();
        this.clocks = new Clocks(rules.timing().zone());
    }

    /** @param unexamined messages that are not examined yet: each may be what is missed */
    public String write(List<SilentTest> all, long unexamined, Instant now) {
        Map<Boolean, List<SilentTest>> over =
                all.stream().collect(Collectors.partitioningBy(s -> s.step() == Step.OVER));
        List<String> lines = new ArrayList<>();
        lines.add("Not heard from, " + service);
        lines.add(clocks.day(now));
        if (unexamined > 0) {
            lines.add(unexamined + " messages are not examined yet: one of them may be what is missed here.");
        }
        section(lines, "There is time", over.getOrDefault(false, List.of()), now);
        section(lines, "Too late", over.getOrDefault(true, List.of()), now);
        lines.add("");
        lines.add(HandoverText.CAUTION);
        return String.join("\n", lines) + "\n";
    }

    private void section(List<String> lines, String title, List<SilentTest> tests, Instant now) {
        lines.add("");
        lines.add(title + ": " + tests.size());
        tests.forEach(s -> lines.add("  " + line(s, now)));
    }

    private String line(SilentTest s, Instant now) {
        TestRecord t = s.test();
        Instant limit = s.windows().latest().sendBy();
        String left = now.isBefore(limit) ? Clocks.amount(now, limit) + " left" : Clocks.amount(limit, now) + " over";
        String perhaps = s.perhaps().stream().map(SubmissionId::toString).collect(Collectors.joining(" "));
        return String.format(
                Locale.ROOT,
                "%-11s %-5s %s; %s; %s%s",
                t.key(),
                t.appointment().clinic(),
                windows(s.windows()),
                left,
                NEXT.get(s.step()),
                perhaps.isEmpty() ? "" : ": " + perhaps);
    }

    private String windows(TestWindows w) {
        String about = w.timed() ? "photograph " : "timer not recorded, photograph at most ";
        return about + clocks.clock(w.earliest().from()) + " to "
                + clocks.clock(w.latest().until()) + ", send by "
                + clocks.clock(w.latest().sendBy());
    }
}
