package org.tidegate.rules;

/** What a word of a subject line can be besides a name; one word may be several. */
public enum WordKind {
    /** Reply and forward prefixes of mail programs. */
    PREFIX,
    /** Left out of names. */
    TITLE,
    /** Stays with the name: Jr., III. */
    SUFFIX,
    /** Part of names that is not capitalised: van, de la, bin. */
    PARTICLE,
    /** A given name too, where it stands large before a surname. */
    GIVEN_NAME,
    /** Means nothing here. */
    FILLER,
    /** A name follows: "my name is", "for my husband". */
    NAME_CUE,
    TIME_CUE,
    DATE_CUE,
    /** Before the time of something else than the test: its photo, its reading. */
    OTHER_TIME,
    /** A ship's name follows: mv, m/v. */
    VESSEL,
    /** A number follows that is no time: berth, lot, temperature. */
    LABEL,
    /** Uhr, hrs, h. */
    HOUR_UNIT,
    MINUTE_UNIT,
    DAY_UNIT,
    MONTH_UNIT,
    YEAR_UNIT,
    /** Behind the number of a day: st, nd, rd, th. */
    ORDINAL,
    /** Between day and month: of, de. */
    OF,
    TODAY,
    YESTERDAY,
    /** The night before the message. */
    LAST_NIGHT,
    /** Before noon, where CLDR lacks the word. */
    MORNING,
    /** From noon on, where CLDR lacks the word. */
    EVENING,
    NOON,
    MIDNIGHT,
    BIRTH_LABEL,
    REFERENCE_LABEL,
    MARK_LABEL,
    RESULT,
    /** Only mail programs and machines write so: undeliverable, out of office. */
    NOTICE,
    /** Words of business mail that is no submission: invoice, meeting. */
    BUSINESS
}
