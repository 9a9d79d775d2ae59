package org.tidegate.rules;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.tidegate.finding.DiscrepancyCode;

@Doc("What the machine may do while nobody is awake. It never sends a result.")
public record UnattendedRules(
        @Doc("Acknowledge every submission at once.") boolean acknowledge,

        @Doc("Ask at once for what is missing while it still counts.")
        boolean ask,

        @Doc("Faults that it may ask about: those that are measured, not judged.")
        List<DiscrepancyCode> askFor,

        @Doc("Faults beside which nothing goes out by itself, not even an acknowledgement; urgent-words always is one.")
        List<DiscrepancyCode> leaveToPeople,

        @Doc("Letters that go out by themselves to one address a day at most.") @Range(min = 1, max = 20)
        int lettersPerAddress,

        @Doc("Write only where the message passed DMARC by our own host.")
        boolean requireDmarcPass,

        @Doc("Write only where the free text is no more than a covering note.")
        boolean requireCoveringNote,

        @Doc("Faults for which the on-call person is told at once; how, says hours.yaml.")
        List<DiscrepancyCode> wakeFor) {

    /** Faults that a machine measures and a participant can mend; all others are judged by a person. */
    static final Set<DiscrepancyCode> MEASURED = Collections.unmodifiableSet(EnumSet.of(
            DiscrepancyCode.SUBJECT_UNREADABLE,
            DiscrepancyCode.NO_PHOTO,
            DiscrepancyCode.NO_CASSETTE,
            DiscrepancyCode.PHOTO_UNREADABLE,
            DiscrepancyCode.NO_ID,
            DiscrepancyCode.READ_EARLY,
            DiscrepancyCode.FORMAT_UNSUPPORTED));
}
