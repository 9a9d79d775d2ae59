package org.tidegate.casework;

/** Hears of each commit boundary as it is passed, so that a test can stop the program exactly there. */
@FunctionalInterface
public interface Milestones {

    Milestones NONE = boundary -> {};

    void passed(Boundary boundary);

    /** The boundaries in their order on a message's way. */
    enum Boundary {
        /** Its sealed bytes are durable, nothing points to them yet. */
        SEALED,
        /** The store knows the message. */
        TAKEN,
        /** Its findings are made, not yet stored. */
        INSPECTED,
        /** Findings and assessments are stored. */
        ASSESSED
    }
}
