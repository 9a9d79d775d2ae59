package org.tidegate.thirdhand;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.stream.IntStream;

/** A picture on its way through the phone: red, green and blue per pixel, in rows; compared by identity only. */
record Frame(float[] values, int width, int height) {

    static Frame empty(int width, int height) {
        return new Frame(new float[3 * width * height], width, height);
    }

    /** A pixel from a pixel. */
    interface Change {
        Rgb of(int i, int j, Rgb before);
    }

    Rgb at(int i, int j) {
        int k = 3 * (j * width + i);
        return new Rgb(values[k], values[k + 1], values[k + 2]);
    }

    void set(int i, int j, Rgb colour) {
        int k = 3 * (j * width + i);
        values[k] = (float) colour.red();
        values[k + 1] = (float) colour.green();
        values[k + 2] = (float) colour.blue();
    }

    int longSide() {
        return Math.max(width, height);
    }

    Frame changed(Change change) {
        Frame changed = empty(width, height);
        IntStream.range(0, height).parallel().forEach(j -> {
            for (int i = 0; i < width; i++) {
                changed.set(i, j, change.of(i, j, at(i, j)));
            }
        });
        return changed;
    }

    /** As 8 bit code; values beyond 0 to 1 are clipped. */
    BufferedImage image() {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        IntStream.range(0, width * height)
                .parallel()
                .forEach(k ->
                        pixels[k] = code(values[3 * k]) << 16 | code(values[3 * k + 1]) << 8 | code(values[3 * k + 2]));
        return image;
    }

    private static int code(double value) {
        return (int) (Curves.clamp(value, 0, 1) * 255 + 0.5);
    }
}
