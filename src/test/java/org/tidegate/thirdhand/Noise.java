package org.tidegate.thirdhand;

/** Smooth noise on the plane, 0 to 1, from hashed lattice points. */
final class Noise {

    private Noise() {}

    static double point(int x, int y, int seed) {
        int h = x * 0x27d4eb2d ^ y * 0x165667b1 ^ seed * 0x9e3779b1;
        h = (h ^ h >>> 15) * 0x85ebca6b;
        h = (h ^ h >>> 13) * 0xc2b2ae35;
        h ^= h >>> 16;
        return (h & 0xffffff) / (double) 0x1000000;
    }

    static double at(double x, double y, int seed) {
        int ix = (int) Math.floor(x);
        int iy = (int) Math.floor(y);
        double fx = smooth(x - ix);
        double fy = smooth(y - iy);
        double top = Curves.mix(point(ix, iy, seed), point(ix + 1, iy, seed), fx);
        double bottom = Curves.mix(point(ix, iy + 1, seed), point(ix + 1, iy + 1, seed), fx);
        return top * (1 - fy) + bottom * fy;
    }

    /** Several octaves, each of half the size and half the weight, turned so that the lattices do not line up. */
    static double rough(double x, double y, int seed, int octaves) {
        double sum = 0;
        double weight = 0.5;
        double weights = 0;
        double px = x;
        double py = y;
        for (int i = 0; i < octaves; i++) {
            sum += weight * at(px, py, seed + i * 77);
            weights += weight;
            weight *= 0.5;
            double turned = px * 1.62 - py * 1.18 + 3.1;
            py = px * 1.18 + py * 1.62 + 1.7;
            px = turned;
        }
        return sum / weights;
    }

    private static double smooth(double t) {
        return t * t * (3 - 2 * t);
    }
}
