package org.tidegate.examination.picture.mrz;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Rendered documents, seeds apart from those of the bench; {@code simulation.share} scales how many. */
class ZoneShareTest {

    private static final int WHOLE = 200;

    @Test
    void nineOfTenAreReadWithoutAFaultAndNobodyIsNamedWrongly() {
        int documents = (int) Math.max(6, WHOLE * Double.parseDouble(System.getProperty("simulation.share", "0.1")));
        ZoneShare.Counts counts = ZoneShare.of(20, documents, 77);
        assertThat(counts.share()).as("" + counts).isGreaterThanOrEqualTo(0.9);
        assertThat(counts.wrong()).as("" + counts).isZero();
    }
}
