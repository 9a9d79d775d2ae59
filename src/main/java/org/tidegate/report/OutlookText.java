package org.tidegate.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidegate.rules.Rules;

/** An outlook as plain text; times are clock times of the clinic's zone, the zone named. */
public final class OutlookText {

    private final String service;
    private final Clocks clocks;

    public OutlookText(Rules rules) {
        this.service = rules.service().name();
        this.clocks = new Clocks(rules.timing().zone());
    }

    public String write(Horizon h) {
        List<String> lines = new ArrayList<>();
        lines.add("Outlook, " + service);
        lines.add(clocks.day(h.now()) + ", with " + h.people() + (h.people() == 1 ? " person" : " people"));
        lines.add("");
        lines.add(h.waiting() + " wait now; of " + h.overdue() + " of them the promise is broken already.");
        lines.add(h.clear()
                .map(t -> "Nothing waits any more at about " + clocks.clock(t) + ".")
                .orElseGet(() -> "It is not clear before " + clocks.clock(h.until()) + "."));
        lines.add("Promises that will break until " + clocks.clock(h.until()) + ": " + h.willBreak() + ".");
        lines.add(h.more()
                .map(n -> "More people that would keep them all: " + n + ".")
                .orElse("No number of people keeps them all: some are due sooner than one piece takes."));
        lines.add(String.format(
                Locale.ROOT,
                "At %.1f arrivals an hour %d %% of new submissions find nobody free (Erlang C). People needed to take up 95 %% within the promise: %d.",
                h.rate(),
                Math.round(100 * h.waits()),
                h.needed()));
        lines.add(basis(h.pace()));
        lines.add("");
        lines.add("Answered later than promised, as things stand: " + h.late().size());
        h.late()
                .forEach(l -> lines.add(String.format(
                        Locale.ROOT,
                        "  %-6s promised by %s, expected at %s, tell %s",
                        l.id(),
                        clocks.clock(l.promised()),
                        clocks.clock(l.expected()),
                        clocks.clock(l.honest()))));
        return String.join("\n", lines) + "\n";
    }

    private static String basis(Pace pace) {
        String arrivals = pace.days() == 0 ? "the last two hours" : "the last " + pace.days() + " days";
        String handling = pace.handling().toSeconds() + " s for a submission, "
                + (pace.pieces() == 0 ? "as assumed" : "the mean of " + pace.pieces());
        return "It rests on the arrivals of " + arrivals + " and on " + handling + ".";
    }
}
