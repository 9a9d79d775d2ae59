package org.tidegate.render;

import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;

/**
 * Settings of one test picture, drawn from its seed. Every setting has a range to tune on and one kept back; a picture for the final measurement
 * takes each from the one kept back half of the time, so that no such picture looks like one that was tuned on.
 */
final class Draws {

    private final Random random;
    private final boolean unseen;

    /** @param unseen also draw from the ranges kept back */
    Draws(long seed, boolean unseen) {
        this.random = new Random(new SplittableRandom(seed).nextLong());
        this.unseen = unseen;
    }

    Random random() {
        return random;
    }

    double in(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    /** From the first range, or from the one kept back. */
    double in(double from, double to, double keptFrom, double keptTo) {
        return kept() ? in(keptFrom, keptTo) : in(from, to);
    }

    <T> T of(List<T> these) {
        return these.get(random.nextInt(these.size()));
    }

    /** One of the first, or of those kept back. */
    <T> T of(List<T> these, List<T> keptBack) {
        return of(kept() ? keptBack : these);
    }

    boolean oneIn(int times) {
        return random.nextInt(times) == 0;
    }

    private boolean kept() {
        return unseen && random.nextBoolean();
    }
}
