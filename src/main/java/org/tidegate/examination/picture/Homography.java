package org.tidegate.examination.picture;

import org.tidegate.finding.PictureFinding.Corner;

/** Perspective map from the unit square to a quad (Heckbert 1989, Fundamentals of texture mapping, section 2.2.3; from memory). */
record Homography(double a, double b, double c, double d, double e, double f, double g, double h) {

    private static final double FINER = 1.3;

    static Homography toQuad(Quad q) {
        double sx = q.a().x() - q.b().x() + q.c().x() - q.d().x();
        double sy = q.a().y() - q.b().y() + q.c().y() - q.d().y();
        double dx1 = q.b().x() - q.c().x();
        double dx2 = q.d().x() - q.c().x();
        double dy1 = q.b().y() - q.c().y();
        double dy2 = q.d().y() - q.c().y();
        double den = dx1 * dy2 - dx2 * dy1;
        double g = den == 0 ? 0 : (sx * dy2 - dx2 * sy) / den;
        double h = den == 0 ? 0 : (dx1 * sy - sx * dy1) / den;
        return new Homography(
                q.b().x() - q.a().x() + g * q.b().x(),
                q.d().x() - q.a().x() + h * q.d().x(),
                q.a().x(),
                q.b().y() - q.a().y() + g * q.b().y(),
                q.d().y() - q.a().y() + h * q.d().y(),
                q.a().y(),
                g,
                h);
    }

    Corner at(double u, double v) {
        double w = g * u + h * v + 1;
        return new Corner((a * u + b * v + c) / w, (d * u + e * v + f) / w);
    }

    /** The quad's inside drawn upright, so many pixels wide and high; a pixel is the mean of four samples where the picture is finer than that. */
    Pixels rectify(Pixels image, int width, int height) {
        boolean finer = Quad.distance(at(0, 0.5), at(1, 0.5)) > FINER * width
                || Quad.distance(at(0.5, 0), at(0.5, 1)) > FINER * height;
        int[] out = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                out[y * width + x] = finer
                        ? rounded(
                                sample(image, (x + 0.25) / width, (y + 0.25) / height)
                                        + sample(image, (x + 0.75) / width, (y + 0.25) / height)
                                        + sample(image, (x + 0.25) / width, (y + 0.75) / height)
                                        + sample(image, (x + 0.75) / width, (y + 0.75) / height),
                                12)
                        : rounded(sample(image, (x + 0.5) / width, (y + 0.5) / height), 10);
            }
        }
        return new Pixels(width, height, out);
    }

    private long sample(Pixels image, double u, double v) {
        double deep = 1 / (g * u + h * v + 1);
        return image.packedAt((a * u + b * v + c) * deep, (d * u + e * v + f) * deep);
    }

    /** @param bits by which the sum is finer than a channel's value */
    private static int rounded(long sum, int bits) {
        int half = 1 << (bits - 1);
        return Pixels.channelOf(sum, 0) + half >> bits << 16
                | Pixels.channelOf(sum, 1) + half >> bits << 8
                | Pixels.channelOf(sum, 2) + half >> bits;
    }
}
