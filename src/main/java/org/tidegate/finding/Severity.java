package org.tidegate.finding;

import java.util.Locale;

/** What a discrepancy does to its submission. */
public enum Severity {
    /** Into the triage queue. */
    HOLD,
    /** Shown, but nothing waits for it. */
    NOTE,
    /** Kept, in no queue. */
    ASIDE;

    /** The stable form in JSON. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
