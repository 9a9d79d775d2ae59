package org.tidegate.work;

import java.util.Locale;

/** Where a letter stands on its way out. Only {@link #ATTEMPTING} and {@link #UNCERTAIN} leave open whether it went. */
public enum OutboxState {
    /** In its delay, in which it can be called back, or to be tried again because nothing went out for certain. */
    WAITING,
    /** Committed before connecting: whoever finds it so after a crash cannot know whether it went. */
    ATTEMPTING,
    /** The server took responsibility, or our own copy came back. */
    SENT,
    /** It may or may not have gone: never sent again by itself, a person decides. */
    UNCERTAIN,
    /** It did not go out, for certain, and will not be tried again. */
    REFUSED,
    /** Called back in time by a person, or because something newer came in. */
    RECALLED,
    /** What it asks for would come too late: it was not sent. */
    TOO_LATE,
    /** A rule forbids to write to this address, or so often. */
    NOT_ALLOWED;

    /** The stable form: {@code too-late}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** It did not go, and someone may have to do something instead. */
    public boolean failed() {
        return this == REFUSED || this == TOO_LATE || this == NOT_ALLOWED;
    }
}
