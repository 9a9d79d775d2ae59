package org.tidegate.rules;

import java.util.List;
import java.util.Map;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.finding.Severity;

@Doc("One check: when it is raised and how it is worded.")
public record CheckRule(
        @Doc("The discrepancy it raises (DESIGN 9).") DiscrepancyCode code,
        @Doc("hold, note or aside.") Severity severity,

        @Doc("CEL condition over the evidence; the check does not hold where it is true.")
        String when,

        @Doc("CEL condition under which the severity is note instead.")
        String noteWhen,

        @Doc("Codes that it hides where it is raised.") List<DiscrepancyCode> hides,

        @Doc("Reason for the operator; {names} are filled in.")
        String reason,

        @Doc("Roles that may judge it.") List<String> judgedBy,

        @Doc("Wording for the participant by language tag; {names} are filled in.")
        Map<String, String> participant) {}
