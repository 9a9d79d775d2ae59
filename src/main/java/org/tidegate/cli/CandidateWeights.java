package org.tidegate.cli;

import java.util.List;
import java.util.Locale;
import org.tidegate.examination.linkage.TunedLevel;
import org.tidegate.rules.MatchingRules;

/** Writes estimated weights as a rule file, every difference explained beside its line. */
final class CandidateWeights {

    private CandidateWeights() {}

    static String yaml(MatchingRules live, List<TunedLevel> tuned, int messages) {
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                """
                        # A candidate, estimated by tune from %d stored messages; it is not live until a person puts it among the rules.
                        # m: by expectation-maximisation; u: counted over tests picked without regard to the message.
                        match_at: %s
                        rival_factor: %s
                        candidate_at: %s
                        no_test_prior: %s
                        open_within: %s
                        fields:
                        """,
                messages,
                live.matchAt(),
                live.rivalFactor(),
                live.candidateAt(),
                live.noTestPrior(),
                live.openWithin()));
        String field = "";
        for (TunedLevel t : tuned) {
            if (!t.field().equals(field)) {
                field = t.field();
                out.append("  - name: ").append(field).append("\n    levels:\n");
            }
            out.append(String.format(
                    Locale.ROOT,
                    "      # %s%n      - {name: %s, m: %.7f, u: %.7f}%n",
                    words(t),
                    t.candidate().name(),
                    t.candidate().m(),
                    t.candidate().u()));
        }
        return out.toString().replace("\r\n", "\n");
    }

    /** One level's difference. */
    static String words(TunedLevel t) {
        return String.format(
                Locale.ROOT,
                "%s %s: m %.4f (live %.4f), u %.6f (live %.6f), weight %+.1f bits; %.0f expected matches state the field",
                t.field(),
                t.live().name(),
                t.candidate().m(),
                t.live().m(),
                t.candidate().u(),
                t.live().u(),
                t.change(),
                t.matches());
    }
}
