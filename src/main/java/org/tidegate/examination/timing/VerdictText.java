package org.tidegate.examination.timing;

import java.util.List;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Level;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.DerivationStep;

/** A verdict in short, for people who do not read the whole proof. */
public final class VerdictText {

    private VerdictText() {}

    /** {@code inside by 4 min 54 s, decided by the device's clock}; {@code undetermined}. */
    public static String headline(WindowVerdict v) {
        String margin = v.margin().map(m -> " by " + Wording.span(m)).orElse("");
        String level = v.level().map(l -> ", decided by " + decider(l)).orElse("");
        return v.verdict().code() + margin + level;
    }

    /** What the proof concludes, without its steps, as text that can follow a colon; empty where nothing is known. */
    public static String gist(WindowVerdict v) {
        StringBuilder gist = new StringBuilder();
        for (DerivationStep step : v.derivation()) {
            if (step.clue().equals(Telling.CONCLUSION)) {
                append(gist, step.words().substring(Telling.THEREFORE.length()));
            } else if (step.clue().equals(Telling.ALTERNATIVE) || aside(step, v.derivation())) {
                append(gist, step.words());
            }
        }
        return gist.toString();
    }

    /** A new sentence, unless it follows a colon. */
    private static void append(StringBuilder gist, String words) {
        boolean after = gist.isEmpty() || gist.charAt(gist.length() - 1) == ':';
        gist.append(gist.isEmpty() ? "" : " ").append(after ? Wording.within(words) : Wording.sentence(words));
    }

    /** Whether a step stands behind the last conclusion: a remark, and no part of a chain. */
    private static boolean aside(DerivationStep step, List<DerivationStep> all) {
        return all.subList(all.indexOf(step), all.size()).stream()
                .noneMatch(s -> s.clue().equals(Telling.CONCLUSION));
    }

    /** What the verdict leans on, each as part of a sentence, in the order of the verdict. */
    public static List<String> leansOn(WindowVerdict v) {
        return v.assumptions().stream().map(VerdictText::words).toList();
    }

    /** {@code the clock of the Kestrel K5 is right}. */
    public static String words(Assumption a) {
        return switch (a.name()) {
            case "same-phone" -> "one phone took the photo and sent the message";
            case "test-in-slot" -> "the test was made in its slot";
            case "timer-within-1-min" -> "the observer's timer is right to within a minute";
            case "clock-right" -> "the clock of the " + a.about() + " is right";
            case "server-honest" -> "the mail server " + a.about() + " tells the time truly";
            case "handed-over-promptly" -> "the phone handed its message over promptly";
            case "phone-in-clinic-zone" -> "the phone kept the clinic's time zone";
            case "fresh-fix" -> "the GPS stamp belongs to the moment of the photo";
            case "stated-in-phone-zone" -> "the participant wrote the time in the zone of the phone";
            case "stated-is-timer" -> "the time that the participant wrote is when the timer started";
            default -> a.toString();
        };
    }

    private static String decider(Level level) {
        return switch (level) {
            case RECORDED -> "the clinic's and our own clocks";
            case NETWORK -> "other mail servers' clocks";
            case DEVICE -> "the device's clock";
            case STATED -> "the participant's words";
        };
    }
}
