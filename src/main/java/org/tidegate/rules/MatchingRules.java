package org.tidegate.rules;

import java.time.Duration;
import java.util.List;

@Doc("Record linkage: agreement levels with their probabilities (Fellegi, Sunter 1969).")
public record MatchingRules(
        @Doc("A probability at or above this is a match, if no rival is near.") @Range(max = 1)
        double matchAt,

        @Doc("A candidate within this factor of the best one's odds is a rival.") @Range(min = 1)
        double rivalFactor,

        @Doc("Candidates below this probability are not candidates.") @Range(max = 1)
        double candidateAt,

        @Doc("Chance that the sender of a message has no open test at all.") @Range(max = 1)
        double noTestPrior,

        @Doc("Tests whose slot lies further than this from the arrival are not open.")
        Duration openWithin,

        @Doc("The compared fields.") List<Field> fields) {

    @Doc("One compared field.")
    public record Field(
            @Doc(
                    "Name of the field: given_name, family_name, suffix, time, arrival, clinic, address, display_name, date_of_birth, reference, mark, guardian.")
            String name,

            @Doc("Agreement levels, the closest first; a missing value has no level and weighs nothing.")
            List<AgreementLevel> levels) {}

    @Doc("One agreement level.")
    public record AgreementLevel(
            @Doc("Name of the level, as shown in explanations.")
            String name,

            @Doc("Probability of the level among true matches.") @Range(max = 1)
            double m,

            @Doc("Probability of the level among non-matches.") @Range(max = 1)
            double u) {}
}
