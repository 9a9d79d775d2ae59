package org.tidegate.thirdhand;

import java.util.Random;

/** Every choice of one picture comes from here, so that a seed gives the same picture again. */
final class Draws {

    private final Random random;

    Draws(long seed) {
        random = new Random(seed);
    }

    /** Spreads neighbouring seeds: the first draws of {@link Random} follow its seed too closely. */
    static Draws ofPicture(long seed) {
        Draws draws = new Draws(seed * 0x9E3779B97F4A7C15L + 12345);
        draws.random.nextInt();
        draws.random.nextInt();
        return draws;
    }

    /** 0 to 1. */
    double share() {
        return random.nextDouble();
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Around 0, deviation 1. */
    double bell() {
        return random.nextGaussian();
    }

    double turn() {
        return between(0, 2 * Math.PI);
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    boolean coin() {
        return random.nextBoolean();
    }

    /** 1 or -1. */
    int sign() {
        return random.nextBoolean() ? 1 : -1;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    long seed() {
        return random.nextLong();
    }

    /** For the noise of one thing. */
    int noiseSeed() {
        return random.nextInt(99_999);
    }

    @SafeVarargs
    final <T> T oneOf(T... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
