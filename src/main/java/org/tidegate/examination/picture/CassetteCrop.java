package org.tidegate.examination.picture;

import java.util.Locale;

/** The cassette of one picture by itself, without anything that lay beside it; or why it is not kept so. */
public sealed interface CassetteCrop {

    /** Which picture of the message, from 0. */
    int picture();

    /** Which of that picture's cassettes, from 0. */
    int cassette();

    /**
     * A cassette cut out and laid straight.
     *
     * @param path the picture's attachment path
     * @param png see-through where nothing of the cassette is
     */
    record Cut(int picture, int cassette, String path, CropShape shape, byte[] png) implements CassetteCrop {}

    /** Not cut out. */
    record Withheld(int picture, int cassette, Why why) implements CassetteCrop {}

    /** Why a cassette is not kept by itself. */
    enum Why {
        /** An identity document lies over or under it. */
        COVERS_DOCUMENT,
        /** Nobody could tell whether an identity document is in the picture. */
        DOCUMENT_UNJUDGED,
        /** It may be something else, a part of the document too. */
        UNSURE,
        /** Something of what lies beside it may be within its outline. */
        OUTLINE_UNSURE,
        /** Nobody could read it from so few pixels. */
        TOO_SMALL,
        /** The message shows more cassettes than are kept of one. */
        TOO_MANY;

        /** The stable form: {@code covers-document}. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
