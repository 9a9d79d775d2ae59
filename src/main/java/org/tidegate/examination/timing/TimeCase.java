package org.tidegate.examination.timing;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.rules.Protocol;

/**
 * Everything a time verdict rests on.
 *
 * @param messages of the submission, in order of taking; at least one
 * @param onCassette the clock time written on the cassette, as the reader transcribed it
 * @param outages the register of our own outages
 */
public record TimeCase(
        TestRecord test,
        Protocol protocol,
        List<MessageEvidence> messages,
        Optional<LocalTime> onCassette,
        List<Outage> outages) {

    public TimeCase {
        messages = List.copyOf(messages);
        outages = List.copyOf(outages);
    }
}
