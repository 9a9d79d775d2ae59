package org.tidegate.thirdhand;

/**
 * What makes one support differ from another of its kind.
 *
 * @param size of its pattern, 0 to 1
 * @param extra gloss, folds or the like, 0 to 1
 */
record Swatch(int seed, double size, double extra, Rgb first, Rgb second, Rgb third) {

    double noise(double x, double y, int layer) {
        return Noise.at(x, y, seed + layer);
    }

    double rough(double x, double y, int layer, int octaves) {
        return Noise.rough(x, y, seed + layer, octaves);
    }
}
