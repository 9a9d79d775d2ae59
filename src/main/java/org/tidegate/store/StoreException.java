package org.tidegate.store;

/** The store cannot go on: a full disk, a lost connection, a failed sync. What was under way counts as not done. */
public final class StoreException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public StoreException(String message, Throwable cause) {
        super(message, cause);
    }
}
