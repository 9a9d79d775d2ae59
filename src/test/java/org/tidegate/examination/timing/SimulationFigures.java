package org.tidegate.examination.timing;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.rules.TimingRules;

/** Counts of a simulation, as a table for people. */
final class SimulationFigures {

    private final Map<String, Integer> verdicts = new TreeMap<>();
    private final Map<String, Integer> leaning = new TreeMap<>();

    void add(WindowVerdict v) {
        String level = v.level().map(l -> "level " + l.number()).orElse("");
        verdicts.merge(
                String.format(
                        Locale.ROOT,
                        "%-5s %-12s %s",
                        v.check().name().toLowerCase(Locale.ROOT),
                        v.verdict().code(),
                        level),
                1,
                Integer::sum);
        if (v.check() == WindowVerdict.Check.PHOTO && v.verdict() != Verdict.UNDETERMINED) {
            v.assumptions().forEach(a -> leaning.merge(a.name(), 1, Integer::sum));
        }
    }

    String told(String title) {
        StringBuilder told = new StringBuilder(title);
        verdicts.forEach((what, count) -> told.append(String.format(Locale.ROOT, "%n  %-28s %6d", what, count)));
        told.append(String.format(Locale.ROOT, "%n  decided photos that lean on"));
        leaning.forEach((name, count) -> told.append(String.format(Locale.ROOT, "%n    %-26s %6d", name, count)));
        return told.toString();
    }

    /** Whether the live rules hold it because of a time: outside, undecided in spite of a capture time, late, or a deciding conflict. */
    static boolean held(TimeJudgement j) {
        boolean photo = j.photo()
                .filter(v ->
                        v.verdict() == Verdict.OUTSIDE || (v.verdict() == Verdict.UNDETERMINED && !j.noCaptureTime()))
                .isPresent();
        boolean sent = j.sent().verdict() != Verdict.INSIDE && !j.outage();
        boolean conflict = j.conflict().filter(TimeJudgement.Conflict::decides).isPresent();
        return photo || sent || conflict || j.statedDiffers().isPresent();
    }

    static TimingRules without(TimingRules r, String assumption) {
        return new TimingRules(
                r.zone(),
                r.ownHosts(),
                r.ownNetworks(),
                r.ownClock(),
                r.serverClock(),
                r.phoneClock(),
                r.grace(),
                r.timerWithin(),
                r.slotBefore(),
                r.slotAfter(),
                r.statedWithin(),
                r.statedDiffers(),
                r.handedOver(),
                r.hopGap(),
                r.offsets(),
                r.samePhone(),
                r.notAPhone(),
                r.assumptions().stream().filter(a -> !a.equals(assumption)).toList(),
                r.internalDateIsDelivery());
    }
}
