package org.tidegate.thirdhand;

/** How much light gets to each place of a relief, on a coarser grid. */
final class LightMap {

    private static final double CELLS = 3.5e6;
    private static final double GOLDEN_ANGLE = 2.39996;
    /** Walls higher than this do not darken a corner more, mm. */
    private static final double CORNER_HEIGHT = 14;

    private final Relief relief;
    private final Ceiling ceiling;
    private final Lamp lamp;
    private final int step;
    private final Grid seen;
    private final Grid field;
    private final Grid open;

    LightMap(Relief relief, Ceiling ceiling, Light light) {
        this.relief = relief;
        this.ceiling = ceiling;
        lamp = light.lamp();
        int w = relief.heights().width();
        int h = relief.heights().height();
        step = Math.max(1, (int) Math.round(Math.sqrt(w * (double) h / CELLS)));
        int wide = w / step + 1;
        int tall = h / step + 1;
        seen = Grid.of(wide, tall, this::seen).averaged(lamp.large() ? 2 : 1);
        field = Grid.of(wide, tall, (i, j) -> light.field(relief.tableX(i * step), relief.tableY(j * step)));
        open = open(wide, tall);
    }

    /** The share of the lamp that a place of the relief sees. */
    double seen(double x, double y) {
        return seen.at(x / step, y / step);
    }

    /** How strong the lamp is there. */
    double field(double x, double y) {
        return field.at(x / step, y / step);
    }

    /** The share of the sky that a place sees, so that corners are dark. */
    double open(double x, double y) {
        return open.at(x / step, y / step);
    }

    private Grid open(int wide, int tall) {
        Grid low = Grid.of(wide, tall, (i, j) -> Math.min(relief.heights().nearest(i * step, j * step), CORNER_HEIGHT));
        double cells = relief.scale() / step;
        Grid near = low.blurred((int) Math.max(1, cells));
        Grid far = low.blurred((int) Math.max(1, 4 * cells));
        return Grid.of(wide, tall, (i, j) -> {
            double here = low.cell(i, j);
            double walls = 0.45 * Math.max(0, near.cell(i, j) - here) + 0.22 * Math.max(0, far.cell(i, j) - here);
            return 1 / (1 + walls);
        });
    }

    private double seen(int i, int j) {
        int x = Math.min(i * step, relief.heights().width() - 1);
        int y = Math.min(j * step, relief.heights().height() - 1);
        int rays = lamp.large() ? 10 : 5;
        double start = 2 * Math.PI * Noise.point(i & 3, j & 3, 5);
        int free = 0;
        for (int ray = 0; ray < rays; ray++) {
            double angle = GOLDEN_ANGLE * ray + start;
            double out = lamp.soft() * Math.sqrt((ray + 0.5) / rays);
            free += free(x, y, lamp.dx() + out * Math.cos(angle), lamp.dy() + out * Math.sin(angle)) ? 1 : 0;
        }
        return free / (double) rays;
    }

    /** Whether a ray from a cell leaves the relief; the direction is for one step up. */
    private boolean free(int fromX, int fromY, double dx, double dy) {
        double flat = Distances.length(dx, dy);
        if (flat < 1e-6) {
            return true;
        }
        double ux = dx / flat;
        double uy = dy / flat;
        double rise = 1 / flat / relief.scale();
        double x = fromX + ux * 1.2;
        double y = fromY + uy * 1.2;
        double z = relief.heights().cell(fromX, fromY) + 0.03 + 1.2 * rise;
        while (z < ceiling.top()) {
            int i = (int) x;
            int j = (int) y;
            if (i < 0
                    || j < 0
                    || i >= relief.heights().width()
                    || j >= relief.heights().height()) {
                return true;
            }
            boolean above = ceiling.over(i, j) < z;
            if (!above && relief.heights().cell(i, j) > z) {
                return false;
            }
            double stride = above ? Ceiling.BLOCK : 1.5;
            x += ux * stride;
            y += uy * stride;
            z += rise * stride;
        }
        return true;
    }
}
