package org.tidegate.thirdhand;

import java.util.List;

/**
 * Where the picture is taken from.
 *
 * @param scale pixels per mm in its middle
 * @param middle where it is aimed
 * @param tilt from straight down
 */
record View(Camera camera, double scale, Placed.Spot middle, double tilt) {

    private static final double CASSETTE = 70;
    private static final int ATTEMPTS = 14;
    private static final Bounds NOTHING = new Bounds(-60, -45, 60, 45);

    /** Pixels. */
    private record Format(int longSide, int shortSide) {

        static Format drawn(Draws draws) {
            int usual = draws.oneOf(1200, 1600, 2048, 0, 3000, 0, 4000, 1280);
            int longSide = usual == 0 ? (int) draws.between(1200, 4000) : usual;
            double share = draws.oneOf(0.75, 0.75, 0.75, 0.5625, 0.667, 1.0);
            boolean tooLarge = share == 1 && longSide > 2600;
            return new Format(longSide, (int) (longSide * (tooLarge ? 0.75 : share)));
        }
    }

    /** Frames the things, with more or less around them. */
    static View drawn(Draws draws, List<Placed> things) {
        Bounds bounds = things.isEmpty() ? NOTHING : Bounds.around(things);
        Format format = Format.drawn(draws);
        int longSide = format.longSide;
        boolean wide = draws.chance(0.8) ? bounds.width() > bounds.height() : draws.coin();
        int width = wide ? longSide : format.shortSide;
        int height = wide ? format.shortSide : longSide;
        double around = draws.chance(0.15) ? draws.between(1.8, 2.8) : draws.between(1.04, 1.6);
        double filled = Math.min(width / (bounds.width() * around), height / (bounds.height() * around));
        double scale = Curves.clamp(filled, longSide * 0.15 / CASSETTE, longSide * 0.62 / CASSETTE);
        double tilt = draws.chance(0.45) ? draws.between(0, 0.12) : draws.between(0.1, 0.61);
        double towards = draws.chance(0.75) ? Math.PI / 2 + draws.between(-0.4, 0.4) : draws.turn();
        double focal = longSide * draws.between(0.75, 1.05) * (1 + 0.6 * tilt);
        double side = 0.04 * longSide / scale;
        Placed.Spot middle = new Placed.Spot(
                bounds.centreX() + draws.between(-side, side), bounds.centreY() + draws.between(-side, side));
        return new View(Camera.at(width, height, focal, focal / scale, middle, tilt, towards), scale, middle, tilt)
                .backedOff(things, towards);
    }

    /** Steps back until all is in the picture, or the cassettes would get too small. */
    private View backedOff(List<Placed> things, double towards) {
        View view = this;
        for (int i = 1; i < ATTEMPTS && !view.holds(things) && view.scale > longSide() * 0.12 / CASSETTE; i++) {
            double smaller = view.scale * 0.95;
            Camera back = Camera.at(
                    camera.width(), camera.height(), camera.focal(), camera.focal() / smaller, middle, tilt, towards);
            view = new View(back, smaller, middle, tilt);
        }
        return view;
    }

    /** Cassettes whole, documents nearly so. */
    private boolean holds(List<Placed> things) {
        return things.stream().allMatch(p -> {
            double margin = (p.thing() instanceof Cassette ? 0.005 : -0.03) * longSide();
            return p.corners().stream().allMatch(c -> camera.sees(camera.project(c.x(), c.y(), p.base()), margin));
        });
    }

    int longSide() {
        return Math.max(camera.width(), camera.height());
    }

    /** The long side on the table, mm. */
    double span() {
        return longSide() / scale;
    }
}
