package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.List;

/** Lines, boxes and words on a white ground, in pixels of 1/96 inch from the top left corner; black, white and greys only. */
final class Drawing {

    /** One thing drawn; later ones lie over earlier ones. */
    sealed interface Mark permits Line, Box, Words {
        Mark moved(int right, int down);
    }

    record Line(int x1, int y1, int x2, int y2, Pen pen) implements Mark {
        @Override
        public Line moved(int right, int down) {
            return new Line(x1 + right, y1 + down, x2 + right, y2 + down, pen);
        }
    }

    record Box(int x, int y, int width, int height, Fill fill) implements Mark {
        @Override
        public Box moved(int right, int down) {
            return new Box(x + right, y + down, width, height, fill);
        }
    }

    /** @param y of the base line */
    record Words(int x, int y, int size, boolean bold, String text) implements Mark {
        @Override
        public Words moved(int right, int down) {
            return new Words(x + right, y + down, size, bold, text);
        }
    }

    /** How a line looks. */
    enum Pen {
        PALE,
        DARK,
        /** Thick and dashed. */
        LIMIT
    }

    /** How a box looks. */
    enum Fill {
        BLACK,
        WHITE,
        HATCHED
    }

    private final List<Mark> marks = new ArrayList<>();

    List<Mark> marks() {
        return List.copyOf(marks);
    }

    void line(int x1, int y1, int x2, int y2, Pen pen) {
        marks.add(new Line(x1, y1, x2, y2, pen));
    }

    void box(int x, int y, int width, int height, Fill fill) {
        marks.add(new Box(x, y, width, height, fill));
    }

    void text(int x, int y, int size, boolean bold, String words) {
        marks.add(new Words(x, y, size, bold, words));
    }

    /** A label that starts at {@code x} where it fits into {@code width}, else ends there. */
    void label(int x, int y, int size, boolean bold, String words, int width) {
        text(TextFit.start(x, size, words, width), y, size, bold, words);
    }

    /** Another drawing, its corner here. */
    void add(Drawing other, int right, int down) {
        other.marks.forEach(m -> marks.add(m.moved(right, down)));
    }
}
