package org.tidegate.thirdhand;

/** One ray's way over a relief, by cells, until it meets it. */
final class March {

    private static final int LONGEST = 4000;
    private static final int BISECTIONS = 4;

    private final Grid heights;
    private final Ceiling ceiling;
    private final double dx;
    private final double dy;
    /** Down per cell of way along the table, mm; negative. */
    private final double fall;

    private double x;
    private double y;
    private double z;
    private double lastX;
    private double lastY;
    private double lastZ;

    private March(Relief relief, Ceiling ceiling, Vector from, Vector ray, double flat) {
        this.heights = relief.heights();
        this.ceiling = ceiling;
        z = ceiling.top();
        double t = (z - from.z()) / ray.z();
        x = relief.cellX(from.x() + t * ray.x());
        y = relief.cellY(from.y() + t * ray.y());
        lastX = x;
        lastY = y;
        lastZ = z;
        dx = ray.x() / flat;
        dy = ray.y() / flat;
        fall = ray.z() / flat / relief.scale();
    }

    /** The cell where a ray meets the relief, between cells. */
    static Camera.Pixel meets(Relief relief, Ceiling ceiling, Vector from, Vector ray) {
        double flat = Distances.length(ray.x(), ray.y());
        // straight down; the length only guards the division
        boolean plumb = flat < 1e-4;
        March march = new March(relief, ceiling, from, ray, plumb ? 1 : flat);
        if (!plumb) {
            march.go();
        }
        return new Camera.Pixel(march.x, march.y);
    }

    private void go() {
        double longest = Math.max(0.6, Math.min(1.2, 0.06 / -fall + 0.6));
        for (int steps = 0; steps < LONGEST; steps++) {
            if (outside()) {
                if (z <= 0) {
                    return;
                }
                stride(8);
                if (z < 0) {
                    return;
                }
                continue;
            }
            float roof = ceiling.over((int) x, (int) y);
            if (z > roof) {
                stride(Math.min(Ceiling.BLOCK, (roof - z) / fall + 0.01));
                continue;
            }
            double ground = heights.at(x, y);
            if (ground >= z) {
                refine();
                return;
            }
            stride(Math.min(longest, Math.max(0.3, (ground - z) / fall * 0.7)));
        }
    }

    private boolean outside() {
        int i = (int) x;
        int j = (int) y;
        return i < 0 || j < 0 || i >= heights.width() || j >= heights.height();
    }

    private void stride(double cells) {
        lastX = x;
        lastY = y;
        lastZ = z;
        x += dx * cells;
        y += dy * cells;
        z += fall * cells;
    }

    private void refine() {
        for (int i = 0; i < BISECTIONS; i++) {
            double midX = (lastX + x) / 2;
            double midY = (lastY + y) / 2;
            double midZ = (lastZ + z) / 2;
            if (heights.at(midX, midY) >= midZ) {
                x = midX;
                y = midY;
                z = midZ;
            } else {
                lastX = midX;
                lastY = midY;
                lastZ = midZ;
            }
        }
    }
}
