package org.tidegate.sample;

/** What a photo of the sample morning shows. */
enum Shot {
    CASSETTE_AND_CARD,
    CASSETTE_ALONE,
    CARD_ALONE,
    BLURRED,
    DARK,
    NEITHER
}
