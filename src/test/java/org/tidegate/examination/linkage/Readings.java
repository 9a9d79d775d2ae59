package org.tidegate.examination.linkage;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.SubjectReading;

/** Readings as the subject room would hand them over. */
final class Readings {

    private Readings() {}

    static SubjectReading of(Optional<String> name, Optional<LocalDateTime> time, Optional<String> clinic) {
        return new SubjectReading(
                SubjectReading.Source.SUBJECT,
                name,
                time,
                Optional.empty(),
                time.isPresent(),
                clinic,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                List.of(),
                List.of());
    }
}
