package org.tidegate.examination.linkage;

import java.util.Locale;

/** Whether the bearer of an identity document is the booked person. */
public enum DocumentAgreement {
    /** Name and date of birth are the booked ones. */
    YES,
    /** It clearly names another person. */
    NO,
    /** Not read, or a person has to look: neither is sure. */
    UNREAD;

    /** As the rules name it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
