package org.tidegate.message;

import java.util.Arrays;

/** A stretch of bytes that is looked at without copying; {@code to} is exclusive. */
record Slice(byte[] bytes, int from, int to) {

    static Slice of(byte[] bytes) {
        return new Slice(bytes, 0, bytes.length);
    }

    int length() {
        return to - from;
    }

    byte at(int index) {
        return bytes[index];
    }

    Slice between(int start, int end) {
        return new Slice(bytes, start, Math.max(start, end));
    }

    /** Index after the line feed that ends the line at {@code index}; {@code to} where none follows. */
    int nextLine(int index) {
        int i = index;
        while (i < to && bytes[i] != '\n') {
            i++;
        }
        return Math.min(to, i + 1);
    }

    /** End of the line's text: the line feed and carriage returns before it left out. */
    int lineEnd(int start, int next) {
        int end = next;
        while (end > start && (bytes[end - 1] == '\n' || bytes[end - 1] == '\r')) {
            end--;
        }
        return end;
    }

    byte[] copy() {
        return Arrays.copyOfRange(bytes, from, to);
    }
}
