package org.tidegate.rules;

import java.time.Duration;
import java.util.List;
import org.tidegate.finding.DiscrepancyCode;

@Doc("What the machine may do while nobody is awake. It never sends a result.")
public record UnattendedRules(
        @Doc("Acknowledge every submission at once.") boolean acknowledge,

        @Doc("Ask at once for what is missing while it still counts.")
        boolean ask,

        @Doc("Faults that it may ask about: those that are measured, not judged.")
        List<DiscrepancyCode> askFor,

        @Doc("Write only where the message passed DMARC by our own host.")
        boolean requireDmarcPass,

        @Doc("Write only where the free text is no more than a covering note.")
        boolean requireCoveringNote,

        @Doc("Faults that wake the on-call person.") List<DiscrepancyCode> wakeFor,

        @Doc("Wake again for the same submission only after this time.")
        Duration wakeAgainAfter) {}
