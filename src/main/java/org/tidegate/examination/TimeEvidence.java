package org.tidegate.examination;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.checks.Photos;
import org.tidegate.examination.checks.Transcription;
import org.tidegate.examination.linkage.Candidate;
import org.tidegate.examination.linkage.LinkageResult;
import org.tidegate.examination.timing.MessageEvidence;
import org.tidegate.examination.timing.TimeCase;
import org.tidegate.finding.Findings;
import org.tidegate.finding.SubjectReading;
import org.tidegate.rules.Protocol;

/** What of a submission the time verdicts rest on. */
final class TimeEvidence {

    private TimeEvidence() {}

    static TimeCase of(AssessmentInput in, LinkageResult match, TestRecord test, Protocol protocol) {
        List<MessageEvidence> evidence = new ArrayList<>();
        for (Findings message : in.messages()) {
            List<Integer> cassette = Photos.of(message).cassette();
            evidence.add(new MessageEvidence(message, reading(message, match), cassette, !cassette.isEmpty()));
        }
        return new TimeCase(
                test, protocol, evidence, in.standing().transcription().flatMap(Transcription::time), in.outages());
    }

    /** The reading that the match was made with; one that leaves the stated time out says nothing about time. */
    private static Optional<SubjectReading> reading(Findings message, LinkageResult match) {
        List<SubjectReading> readings = message.readings();
        return match.candidates().stream()
                .findFirst()
                .map(Candidate::reading)
                .filter(i -> i < readings.size())
                .map(readings::get)
                .filter(r -> r.testTime().isPresent())
                .or(() -> Optional.of(readings.get(0)));
    }
}
