package org.tidegate.finding;

/**
 * A point in time that clues speak about.
 *
 * @param index which photo, which hop (0 = the first one handed over) or which signature; 0 for the other kinds
 */
public record Event(Kind kind, int index) {

    public enum Kind {
        /** 1970-01-01T00:00Z: a clue against it is an absolute time. */
        EPOCH,
        /** The sample goes on to the cassette and the timer starts. */
        TEST,
        /** A photo is taken. */
        PHOTO,
        /** The participant presses send. */
        SENT,
        /** A mail server takes the message over. */
        HOP,
        /** A domain signs it (DKIM). */
        SIGNED,
        /** Our own boundary server takes it over. */
        ARRIVED,
        /** The moment at which a device's clock showed 1970-01-01T00:00 UTC: {@link #EPOCH} exactly where that clock is right. */
        DEVICE_ZERO
    }

    public static final Event EPOCH = new Event(Kind.EPOCH, 0);
    public static final Event TEST = new Event(Kind.TEST, 0);
    public static final Event SENT = new Event(Kind.SENT, 0);
    public static final Event ARRIVED = new Event(Kind.ARRIVED, 0);
    public static final Event DEVICE_ZERO = new Event(Kind.DEVICE_ZERO, 0);

    public static Event photo(int index) {
        return new Event(Kind.PHOTO, index);
    }

    public static Event signed(int index) {
        return new Event(Kind.SIGNED, index);
    }

    public static Event hop(int index) {
        return new Event(Kind.HOP, index);
    }
}
