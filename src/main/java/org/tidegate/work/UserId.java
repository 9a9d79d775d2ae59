package org.tidegate.work;

/** A person's sign-in name, {@link #DAEMON} or {@link #POLICY}. */
public record UserId(String value) {

    /** What acts when nobody does. */
    public static final UserId DAEMON = new UserId("daemon");

    /** What answers by itself within {@code unattended.yaml}. */
    public static final UserId POLICY = new UserId("policy");
}
