package org.tidegate.examination.linkage;

import org.tidegate.rules.MatchingRules.AgreementLevel;

/**
 * A level of agreement as the rules have it and as the history suggests it.
 *
 * @param matches how many of the messages that are taken for matches have the field at all
 */
public record TunedLevel(String field, AgreementLevel live, AgreementLevel candidate, double matches) {

    /** How much the candidate weighs more than the live level, in bits. */
    public double change() {
        return Weights.log2(candidate.m() / candidate.u()) - Weights.log2(live.m() / live.u());
    }
}
