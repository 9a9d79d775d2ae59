package org.tidegate.otherhand;

import java.awt.Color;
import java.util.Random;

/** Every choice of one picture comes from here, so that a seed gives the same picture again. */
final class Draw {

    private final Random random;

    Draw(long seed) {
        random = new Random(seed * 0x9E3779B97F4A7C15L);
        random.nextLong();
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Mostly near {@code low}, with a tail up to {@code high}: the way blur and noise spread over phone pictures. */
    double mostlyLow(double low, double high) {
        return low + (high - low) * Math.pow(random.nextDouble(), 2.3);
    }

    double bell(double mean, double deviation) {
        return mean + deviation * Math.max(-2.5, Math.min(2.5, random.nextGaussian()));
    }

    /** Both bounds belong to the range. */
    int whole(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    double turn() {
        return between(0, 2 * Math.PI);
    }

    @SafeVarargs
    final <T> T oneOf(T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    /** One of the packed colours, each channel moved by up to {@code spread}. */
    Color colour(int spread, int... packed) {
        int rgb = packed[random.nextInt(packed.length)];
        int shared = whole(-spread, spread);
        return new Color(
                near(rgb >> 16 & 255, shared, spread),
                near(rgb >> 8 & 255, shared, spread),
                near(rgb & 255, shared, spread));
    }

    private int near(int value, int shared, int spread) {
        return Math.max(0, Math.min(255, value + shared + whole(-spread / 3, spread / 3)));
    }

    String letters(int count, String alphabet) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(alphabet.charAt(random.nextInt(alphabet.length())));
        }
        return text.toString();
    }

    long seed() {
        return random.nextLong();
    }
}
