package org.tidegate.thirdhand;

/** Hard plain surfaces. */
final class Boards {

    private Boards() {}

    static Surface glass(Swatch s, double x, double y) {
        double dust = Curves.step(0.985, 1, Noise.point((int) (x * 5), (int) (y * 5), s.seed()));
        Rgb colour = s.first().times(1 + 0.1 * s.noise(x, y, 0)).plus(Rgb.grey(dust * 0.06));
        return Surface.flat(colour, 0.5 + 0.45 * s.size());
    }

    static Surface desk(Swatch s, double x, double y) {
        double light = 0.95 + 0.06 * s.rough(x * 0.02, y * 0.02, 0, 3) + 0.02 * s.noise(x * 4, y * 4, 0);
        return new Surface(s.first().times(light), 0.01 * s.noise(x * 3, y * 3, 2), 0.1 + 0.5 * s.size());
    }

    static Surface tiles(Swatch s, double x, double y) {
        double tile = 60 + 60 * s.size();
        double fx = Curves.cycle(x / tile);
        double fy = Curves.cycle(y / tile);
        double edge = Math.min(Math.min(fx, 1 - fx), Math.min(fy, 1 - fy)) * tile;
        double own = 0.92 + 0.1 * Noise.point((int) (x / tile), (int) (y / tile), s.seed());
        double light = own * (0.97 + 0.05 * s.rough(x * 0.1, y * 0.1, 0, 3));
        boolean joint = edge < 1.4;
        Rgb colour = (joint ? s.second() : s.first()).times(light);
        return new Surface(colour, 0.6 * Curves.step(1, 2.4, edge), joint ? 0 : 0.7);
    }

    /** Below paper, or a hand. */
    static Surface plain(Swatch s, double x, double y) {
        return Surface.flat(s.first().times(0.8 + 0.2 * s.rough(x * 0.02, y * 0.02, 0, 4)), 0.1);
    }
}
