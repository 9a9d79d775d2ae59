package org.tidegate.work;

/**
 * A piece of work that the daemon draws from the queue.
 *
 * @param key what it is about: one item of a kind and key exists at a time
 * @param tries how often it was drawn before
 */
public record WorkItem(long id, Kind kind, long key, int tries) {

    public enum Kind {
        /** Inspect the message of this number. */
        INSPECT,
        /** Assess the submission of the message of this number again. */
        ASSESS
    }
}
