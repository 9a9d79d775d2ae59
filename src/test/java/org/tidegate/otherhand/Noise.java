package org.tidegate.otherhand;

/** Smooth noise on the plane, 0 to 1, from hashed lattice points. */
final class Noise {

    private final int seed;

    Noise(long seed) {
        this.seed = (int) (seed ^ seed >>> 32);
    }

    double at(double x, double y) {
        int ix = (int) Math.floor(x);
        int iy = (int) Math.floor(y);
        double fx = smooth(x - ix);
        double fy = smooth(y - iy);
        double top = point(ix, iy) * (1 - fx) + point(ix + 1, iy) * fx;
        double bottom = point(ix, iy + 1) * (1 - fx) + point(ix + 1, iy + 1) * fx;
        return top * (1 - fy) + bottom * fy;
    }

    /** Several octaves, each of half the size and half the weight. */
    double rough(double x, double y, int octaves) {
        double sum = 0;
        double weight = 0.5;
        double scale = 1;
        for (int i = 0; i < octaves; i++) {
            sum += weight * at(x * scale + 17.3 * i, y * scale - 9.1 * i);
            weight /= 2;
            scale *= 2.03;
        }
        return sum / (1 - weight * 2);
    }

    double point(int x, int y) {
        int h = x * 0x27d4eb2d ^ y * 0x165667b1 ^ seed;
        h = (h ^ h >>> 15) * 0x2c1b3c6d;
        h = (h ^ h >>> 12) * 0x297a2d39;
        return ((h ^ h >>> 15) & 0xffffff) / (double) 0x1000000;
    }

    private static double smooth(double t) {
        return t * t * (3 - 2 * t);
    }
}
