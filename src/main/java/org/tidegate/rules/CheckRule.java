package org.tidegate.rules;

import java.util.List;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.finding.Severity;

@Doc("One check: when it is raised and how it is worded for the operator; the participant's wording stands in texts/.")
public record CheckRule(
        @Doc("The discrepancy it raises (DESIGN 9).") DiscrepancyCode code,
        @Doc("hold, note or aside.") Severity severity,

        @Doc("CEL condition over the evidence e under which it is raised.")
        Condition when,

        @Doc("CEL condition under which the severity is note instead.")
        Condition noteWhen,

        @Doc(value = "Codes that it hides where it is raised.", required = false)
        List<DiscrepancyCode> hides,

        @Doc("Reason for the operator; {figures} are filled in.")
        String reason,

        @Doc(value = "Roles that may judge it.", required = false)
        List<String> judgedBy) {

    /** When it is raised. */
    public Condition raised() {
        return when;
    }

    /** When it is only a note. */
    public Condition softened() {
        return noteWhen;
    }
}
