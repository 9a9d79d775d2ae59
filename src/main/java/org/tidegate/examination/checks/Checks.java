package org.tidegate.examination.checks;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.finding.Severity;
import org.tidegate.rules.CheckRule;

/** Evaluates every check of the rules over one submission, root causes hiding their consequences. */
public final class Checks {

    private Checks() {}

    /** The discrepancies of a submission, in the order of the rules. */
    public static List<Discrepancy> run(CheckInput in) {
        FactSheet sheet = facts(in);
        List<CheckRule> raised = new ArrayList<>();
        for (CheckRule rule : in.rules().checks()) {
            if (rule.raised().holds(sheet.facts())) {
                raised.add(rule);
            }
        }
        Set<DiscrepancyCode> hidden = hidden(raised);
        return raised.stream()
                .filter(r -> !hidden.contains(r.code()))
                .map(r -> discrepancy(r, sheet))
                .toList();
    }

    private static FactSheet facts(CheckInput in) {
        FactSheet sheet = new FactSheet();
        SenderFacts.add(in, sheet);
        StatementFacts.add(in, sheet);
        PictureFacts.add(in, sheet);
        TimeFacts.add(in, sheet);
        KitFacts.add(in, sheet);
        FileFacts.add(in, sheet);
        return sheet;
    }

    /** Hiding does not cascade through a check that is itself hidden: only what stands explains anything. */
    private static Set<DiscrepancyCode> hidden(List<CheckRule> raised) {
        Set<DiscrepancyCode> hidden = EnumSet.noneOf(DiscrepancyCode.class);
        for (CheckRule rule : raised) {
            if (!hidden.contains(rule.code())) {
                hidden.addAll(rule.hides());
            }
        }
        return hidden;
    }

    private static Discrepancy discrepancy(CheckRule rule, FactSheet sheet) {
        boolean note = rule.softened().holds(sheet.facts());
        return new Discrepancy(
                rule.code(),
                note ? Severity.NOTE : rule.severity(),
                fill(rule.reason(), sheet.figures()),
                sheet.figures(),
                List.of());
    }

    /** Replaces {@code {name}} by its figure; a name without a figure stays out. */
    static String fill(String template, Map<String, String> figures) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int open = template.indexOf('{'); open >= 0; open = template.indexOf('{', from)) {
            int close = template.indexOf('}', open);
            if (close < 0) {
                break;
            }
            out.append(template, from, open).append(figures.getOrDefault(template.substring(open + 1, close), ""));
            from = close + 1;
        }
        return out.append(template.substring(from)).toString().strip();
    }
}
