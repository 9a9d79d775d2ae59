package org.tidegate.work;

/** A person's sign-in name, or {@link #DAEMON}. */
public record UserId(String value) {

    /** What acts when nobody does. */
    public static final UserId DAEMON = new UserId("daemon");
}
