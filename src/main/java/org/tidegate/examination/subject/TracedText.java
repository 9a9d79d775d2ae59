package org.tidegate.examination.subject;

import java.util.Arrays;

/**
 * Text that knows where each of its characters came from, so that spans point into what the person typed.
 *
 * @param origin for each character of {@code text} the index in the original; one more entry for the end
 */
record TracedText(String text, int[] origin) {

    static TracedText of(String original, int limit) {
        String kept = original.length() > limit ? original.substring(0, limit) : original;
        int[] origin = new int[kept.length() + 1];
        for (int i = 0; i < origin.length; i++) {
            origin[i] = i;
        }
        return new TracedText(kept, origin);
    }

    int length() {
        return text.length();
    }

    /** Collects a rewritten text, character runs with the place they came from. */
    static final class Rewrite {
        private final TracedText source;
        private final StringBuilder text = new StringBuilder();
        private int[] origin;

        Rewrite(TracedText source) {
            this.source = source;
            this.origin = new int[source.length() + 16];
        }

        /** Appends {@code replacement} for what begins at {@code at} of the source. */
        void append(CharSequence replacement, int at) {
            for (int i = 0; i < replacement.length(); i++) {
                append(replacement.charAt(i), at);
            }
        }

        void append(char c, int at) {
            if (text.length() + 1 >= origin.length) {
                origin = Arrays.copyOf(origin, origin.length * 2);
            }
            origin[text.length()] = source.origin[at];
            text.append(c);
        }

        TracedText done() {
            int[] kept = Arrays.copyOf(origin, text.length() + 1);
            kept[text.length()] = source.origin[source.length()];
            return new TracedText(text.toString(), kept);
        }
    }
}
