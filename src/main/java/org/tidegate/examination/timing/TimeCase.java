package org.tidegate.examination.timing;

import java.util.List;
import org.tidegate.booking.TestRecord;
import org.tidegate.rules.Protocol;

/**
 * Everything a time verdict rests on.
 *
 * @param messages of the submission, in order of taking; at least one
 * @param outages the register of our own outages
 */
public record TimeCase(TestRecord test, Protocol protocol, List<MessageEvidence> messages, List<Outage> outages) {

    public TimeCase {
        messages = List.copyOf(messages);
        outages = List.copyOf(outages);
    }
}
