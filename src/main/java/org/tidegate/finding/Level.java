package org.tidegate.finding;

/** How far the clock behind a clue is trusted; DESIGN 6. A lower level never overturns a higher one. */
public enum Level {
    /** The clinic's own record and our own mail server. */
    RECORDED(1),
    /** Other mail servers on the way. */
    NETWORK(2),
    /** The participant's phone, or whoever wrote the file. */
    DEVICE(3),
    /** The participant's words. */
    STATED(4);

    private final int number;

    Level(int number) {
        this.number = number;
    }

    /** 1 is trusted most. */
    public int number() {
        return number;
    }
}
