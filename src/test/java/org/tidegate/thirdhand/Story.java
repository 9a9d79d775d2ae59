package org.tidegate.thirdhand;

import java.util.Locale;

/** Words of a picture's story. */
final class Story {

    private Story() {}

    static String format(String words, Object... values) {
        return String.format(Locale.ROOT, words, values);
    }

    static String hidden(String what, double share) {
        return what + " hidden " + Math.round(share * 100) + "%";
    }
}
