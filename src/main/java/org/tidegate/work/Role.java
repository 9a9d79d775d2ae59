package org.tidegate.work;

import java.util.Locale;

/** What a user may do. */
public enum Role {
    OPERATOR,
    READER,
    AUDITOR,
    CLINICAL_LEAD,
    DATA_PROTECTION_OFFICER;

    /** The stable form in rules and store. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
