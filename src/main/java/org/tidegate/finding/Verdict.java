package org.tidegate.finding;

import java.util.Locale;

/** Whether a point in time lies in its window. */
public enum Verdict {
    /** Every possible value lies inside. */
    INSIDE,
    /** No possible value lies inside, even with every tolerance. */
    OUTSIDE,
    /** The evidence does not decide. */
    UNDETERMINED;

    /** The stable form in JSON. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
