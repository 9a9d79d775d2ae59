package org.tidegate.examination.picture;

import org.tidegate.finding.PictureFinding.Corner;

/** Perspective map from the unit square to a quad (Heckbert 1989, Fundamentals of texture mapping, section 2.2.3; from memory). */
record Homography(double a, double b, double c, double d, double e, double f, double g, double h) {

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

    /** The quad's inside drawn upright, so many pixels wide and high; each pixel the mean of four samples. */
    Pixels rectify(Pixels image, int width, int height) {
        int[] out = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                out[y * width + x] = colour(image, x, y, width, height);
            }
        }
        return new Pixels(width, height, out);
    }

    private int colour(Pixels image, int x, int y, int width, int height) {
        int[] sum = new int[3];
        for (int i = 0; i < 4; i++) {
            double u = (x + 0.25 + 0.5 * (i & 1)) / width;
            double v = (y + 0.25 + 0.5 * (i >> 1)) / height;
            double w = g * u + h * v + 1;
            image.addSample((a * u + b * v + c) / w, (d * u + e * v + f) / w, sum);
        }
        return mean(sum[0]) << 16 | mean(sum[1]) << 8 | mean(sum[2]);
    }

    /** Of four samples in 256ths. */
    private static int mean(int sum) {
        return (sum + 512) >> 10;
    }
}
