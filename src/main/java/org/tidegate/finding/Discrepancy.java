package org.tidegate.finding;

import java.util.List;
import java.util.Map;

/**
 * A check that does not hold.
 *
 * @param reason plain English for the operator, with figures
 * @param parameters figures and names by which the participant's wording is filled in, any language
 * @param restsOn the findings it rests on, as places in the evidence
 */
public record Discrepancy(
        DiscrepancyCode code, Severity severity, String reason, Map<String, String> parameters, List<String> restsOn) {

    public Discrepancy {
        parameters = Map.copyOf(parameters);
        restsOn = List.copyOf(restsOn);
    }
}
