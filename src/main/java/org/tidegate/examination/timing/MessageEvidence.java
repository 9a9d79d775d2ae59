package org.tidegate.examination.timing;

import java.util.List;
import java.util.Optional;
import org.tidegate.finding.Findings;
import org.tidegate.finding.SubjectReading;

/**
 * One message of a submission, as the time verdicts need it.
 *
 * @param reading what it states, where a reading was chosen
 * @param cassettePhotos indexes into {@code findings.pictures()} of the pictures that show the cassette
 * @param carriesCassette whether any of its pictures does; a message without is a supplement
 */
public record MessageEvidence(
        Findings findings, Optional<SubjectReading> reading, List<Integer> cassettePhotos, boolean carriesCassette) {

    public MessageEvidence {
        cassettePhotos = List.copyOf(cassettePhotos);
    }
}
