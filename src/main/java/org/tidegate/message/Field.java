package org.tidegate.message;

import java.util.Locale;

/**
 * One header field.
 *
 * @param position its index in the section, 0 on top
 * @param name lower case
 * @param value unfolded, trimmed, encoded-words left as they are
 */
record Field(int position, String name, String value) {

    Field {
        name = name.toLowerCase(Locale.ROOT);
    }

    String decoded() {
        return EncodedWords.decode(value);
    }
}
