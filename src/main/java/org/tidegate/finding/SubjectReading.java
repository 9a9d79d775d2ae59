package org.tidegate.finding;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * One way to read what a participant stated, the best first.
 *
 * @param source where it was read
 * @param name as written, prefixes, titles and markers left out
 * @param testTime wall time of the clinic's zone, to the minute; a stated zone is already converted
 * @param statedZone the zone the participant named, as written
 * @param dateStated whether a date was written, rather than inferred from the arrival
 * @param clinic the clinic's code
 * @param reference an appointment reference as written
 * @param claim a result word as written: the participant's claim, never a reading
 * @param cost lower is better; comparable within one message only
 * @param spans which characters were read as what
 * @param problems why it is not fully readable, in plain English
 */
public record SubjectReading(
        Source source,
        Optional<String> name,
        Optional<LocalDateTime> testTime,
        Optional<String> statedZone,
        boolean dateStated,
        Optional<String> clinic,
        Optional<String> reference,
        Optional<String> mark,
        Optional<LocalDate> dateOfBirth,
        Optional<String> claim,
        double cost,
        List<Span> spans,
        List<String> problems) {

    public enum Source {
        SUBJECT,
        BODY,
        /** Some fields from each. */
        BOTH
    }

    /** Characters {@code start} (inclusive) to {@code end} (exclusive) were read as {@code field}. */
    public record Span(String field, int start, int end) {}

    /** The same reading with the name left out: what was taken for one may be words of a letter. */
    public SubjectReading withoutName() {
        return new SubjectReading(
                source,
                Optional.empty(),
                testTime,
                statedZone,
                dateStated,
                clinic,
                reference,
                mark,
                dateOfBirth,
                claim,
                cost,
                spans,
                problems);
    }

    /** Readable: name and test time are both there. */
    public boolean readable() {
        return name.isPresent() && testTime.isPresent();
    }
}
