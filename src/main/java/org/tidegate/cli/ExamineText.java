package org.tidegate.cli;

import java.util.List;
import java.util.Locale;
import org.tidegate.examination.Assessment;
import org.tidegate.examination.timing.VerdictText;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.Check;
import org.tidegate.finding.WindowVerdict.DerivationStep;

/** What {@code examine --explain} says of one message, for people. */
final class ExamineText {

    /** Stands once, below everything. */
    static final String CAUTION =
            "Tidegate sorts and times submissions; it does not diagnose. A trained, authorised reader decides. Urgent"
                    + " symptoms need urgent medical help. Local codes and licensed practice prevail.";

    private ExamineText() {}

    static String of(String file, Assessment a) {
        StringBuilder text = new StringBuilder(file).append('\n');
        line(text, 1, headline(a));
        for (Discrepancy d : a.discrepancies()) {
            line(text, 1, d.severity().code() + " " + d.code().code() + ": " + d.reason());
        }
        a.windows().forEach(w -> window(text, w));
        return text.toString();
    }

    private static void window(StringBuilder text, WindowVerdict w) {
        String what = w.check() == Check.PHOTO ? "photo in the reading window: " : "sent in time: ";
        line(text, 1, what + VerdictText.headline(w));
        for (DerivationStep step : w.derivation()) {
            line(text, 2, step.words());
        }
        List<String> leansOn = VerdictText.leansOn(w);
        if (!leansOn.isEmpty()) {
            line(text, 2, "This leans on: " + String.join("; ", leansOn) + ".");
        }
    }

    private static String headline(Assessment a) {
        String stands = a.disposition().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String fit =
                switch (a.match().outcome()) {
                    case MATCH -> "belongs to " + a.test().map(Object::toString).orElse("");
                    case AMBIGUOUS -> "more than one test fits";
                    case NONE -> "no test fits";
                };
        return fit
                + String.format(
                        Locale.ROOT, " (probability %.6f), %s", a.match().probability(), stands);
    }

    private static void line(StringBuilder text, int depth, String words) {
        text.append("  ".repeat(depth)).append(words).append('\n');
    }
}
