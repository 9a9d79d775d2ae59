package org.tidegate.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.tidegate.report.Handover.Act;
import org.tidegate.report.Handover.Call;
import org.tidegate.report.Handover.Case;
import org.tidegate.report.Handover.Standing;
import org.tidegate.report.Handover.Troubled;
import org.tidegate.rules.Rules;
import org.tidegate.work.PolicyAct;

/** A handover as plain text, for a terminal and for mail; times are clock times of the clinic's zone, the zone named. */
public final class HandoverText {

    /** Stands under every report that people act on. */
    static final String CAUTION =
            "Tidegate sorts and times submissions; it does not diagnose. A result is released only by a"
                    + " trained, authorised reader.\nUrgent symptoms need urgent medical help. Isolation, confirmation and notification"
                    + " follow local codes and licensed practice.";

    private static final Map<Standing, String> TITLES = Map.of(
            Standing.URGENT, "Urgent words: call, do not only write",
            Standing.SAVABLE, "Can still be saved, if it is asked for now",
            Standing.WAITING, "Waiting for the participant",
            Standing.TO_DECIDE, "A person decides",
            Standing.TO_READ, "To be read",
            Standing.LOST, "Can no longer be saved");

    private final String service;
    private final Clocks clocks;

    public HandoverText(Rules rules) {
        this.service = rules.service().name();
        this.clocks = new Clocks(rules.timing().zone());
    }

    public String write(Handover h) {
        List<String> lines = new ArrayList<>();
        lines.add("Handover, " + service);
        lines.add(clocks.day(h.from()) + " – " + clocks.day(h.until()));
        lines.add("");
        lines.add(
                h.messages() + " messages came in; " + h.aside() + " submissions are set aside (no person wrote them); "
                        + h.unexamined() + " examinations are still to be done.");
        for (Standing standing : Standing.values()) {
            section(lines, String.valueOf(TITLES.get(standing)), h.of(standing), c -> open(c, h.until()));
        }
        section(lines, "Went out by itself", h.acts(), this::act);
        section(lines, "The on-call person was told", h.calls(), this::call);
        section(lines, "Letters to look after", h.troubled(), HandoverText::troubled);
        lines.add("");
        lines.add(CAUTION);
        return String.join("\n", lines) + "\n";
    }

    private static <T> void section(List<String> lines, String title, List<T> items, Function<T, String> line) {
        lines.add("");
        lines.add(title + ": " + items.size());
        items.forEach(i -> lines.add("  " + line.apply(i).stripTrailing()));
    }

    private String open(Case c, Instant now) {
        String what = String.format(
                Locale.ROOT,
                "%-6s %-11s %-5s %-34s",
                c.id(),
                c.test().orElse("no test"),
                c.clinic().orElse(""),
                String.join(" ", c.codes()));
        return what + " " + until(c, now)
                + c.neededBy().map(t -> "; needed by " + clocks.day(t)).orElse("") + byItself(c);
    }

    private String until(Case c, Instant now) {
        return switch (c.standing()) {
            case SAVABLE ->
                Clocks.amount(now, c.until().orElse(now)) + " left, until "
                        + clocks.clock(c.until().orElse(now));
            case WAITING -> "until " + c.until().map(clocks::clock).orElse("somebody looks");
            case LOST -> "too late since " + clocks.clock(c.until().orElse(now));
            case URGENT, TO_DECIDE, TO_READ ->
                "answer due " + clocks.clock(c.due())
                        + (c.due().isBefore(now) ? ", " + Clocks.amount(c.due(), now) + " over" : "");
        };
    }

    private String byItself(Case c) {
        return c.act()
                .filter(a -> c.standing() != Standing.TO_READ)
                .map(a -> switch (a.act()) {
                    case ASKED -> "; asked " + clocks.clock(a.when());
                    case ACKNOWLEDGED -> "; acknowledged " + clocks.clock(a.when());
                    case LEFT -> "; not written to (" + String.join(", ", a.codes()) + ")";
                })
                .orElse("");
    }

    private String act(Act a) {
        PolicyAct act = a.act();
        String why = act.codes().isEmpty() ? "everything adds up" : String.join(" ", act.codes());
        return String.format(
                Locale.ROOT,
                "%s %-6s %-11s %-13s %-34s %s",
                clocks.clock(act.when()),
                act.submission(),
                a.test().orElse("no test"),
                act.act().code(),
                why,
                a.letter().code());
    }

    private String call(Call c) {
        return clocks.clock(c.when()) + " " + c.id() + " " + c.why() + ": "
                + c.letter().code();
    }

    private static String troubled(Troubled t) {
        return "letter " + t.letter() + t.id().map(id -> " about " + id).orElse("") + " (" + t.kind() + "): "
                + t.state().code();
    }
}
