package org.tidegate.work;

/** Which part of the queue a submission stands in; urgent words come first in every lane (DESIGN 10). */
public enum Lane {
    /** A correction still counts if it is asked for now. */
    SAVABLE,
    /** The rest, by due. */
    REST,
    /** The promised answer is late. */
    OVERDUE,
    /** A person writes, without photo or test time. */
    CORRESPONDENCE
}
