package org.tidegate.examination;

import java.util.List;
import org.tidegate.examination.picture.CassetteCrop;
import org.tidegate.finding.Findings;

/**
 * What looking into one message gave: findings, which are assessed, and the cassettes by themselves, which are only kept.
 *
 * @param crops what became of every cassette that was found
 */
public record Inspected(Findings findings, List<CassetteCrop> crops) {

    public Inspected {
        crops = List.copyOf(crops);
    }
}
