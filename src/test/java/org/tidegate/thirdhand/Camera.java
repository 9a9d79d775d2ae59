package org.tidegate.thirdhand;

import java.util.List;
import java.util.stream.IntStream;

/** A pinhole over the table; picture y runs along table y, so that an untilted picture is seen as drawn. */
record Camera(int width, int height, double focal, Vector place, Vector forward, Vector right, Vector down) {

    /** In the picture, pixels. */
    record Pixel(double x, double y) {}

    /**
     * Looks at a place of the table.
     *
     * @param focal pixels
     * @param distance mm
     * @param tilt from straight down
     * @param towards where it stands, seen from there
     */
    static Camera at(
            int width, int height, double focal, double distance, Placed.Spot aim, double tilt, double towards) {
        Vector back =
                new Vector(Math.sin(tilt) * Math.cos(towards), Math.sin(tilt) * Math.sin(towards), Math.cos(tilt));
        Vector place = new Vector(aim.x(), aim.y(), 0).plus(back, distance);
        Vector forward = new Vector(-back.x(), -back.y(), -back.z());
        Vector right = new Vector(1, 0, 0).plus(forward, -forward.x()).unit();
        Vector down = forward.cross(right);
        Vector upright = down.y() < 0 ? new Vector(-down.x(), -down.y(), -down.z()) : down;
        return new Camera(width, height, focal, place, forward, right, upright);
    }

    Pixel project(double x, double y, double z) {
        Vector to = new Vector(x, y, z).plus(place, -1);
        double deep = to.dot(forward);
        return new Pixel(width / 2.0 + focal * to.dot(right) / deep, height / 2.0 + focal * to.dot(down) / deep);
    }

    boolean sees(Pixel pixel, double margin) {
        return pixel.x >= margin && pixel.y >= margin && pixel.x <= width - margin && pixel.y <= height - margin;
    }

    /** The direction into a pixel. */
    Vector ray(double x, double y) {
        return forward.plus(right, (x - width / 2.0) / focal)
                .plus(down, (y - height / 2.0) / focal)
                .unit();
    }

    /** Where a pixel meets the table; near the horizon, some way off. */
    Placed.Spot ground(double x, double y) {
        Vector ray = ray(x, y);
        double t = ray.z() < -0.12 ? -place.z() / ray.z() : place.z() / 0.12;
        return new Placed.Spot(place.x() + t * ray.x(), place.y() + t * ray.y());
    }

    /** What of the table it sees. */
    Bounds seen() {
        List<Placed.Spot> spots = IntStream.range(0, 9)
                .mapToObj(i -> ground(width * (i % 3) / 2.0, height * (i / 3) / 2.0))
                .toList();
        return Bounds.of(spots);
    }
}
