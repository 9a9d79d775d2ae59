package org.tidegate.examination.picture;

import java.util.Arrays;
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
        int[] sum = new int[3];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                Arrays.fill(sum, 0);
                int n = finer ? 4 : 1;
                for (int i = 0; i < n; i++) {
                    double inX = finer ? 0.25 + 0.5 * (i & 1) : 0.5;
                    double inY = finer ? 0.25 + 0.5 * (i >> 1) : 0.5;
                    addSample(image, (x + inX) / width, (y + inY) / height, sum);
                }
                out[y * width + x] = mean(sum[0], n) << 16 | mean(sum[1], n) << 8 | mean(sum[2], n);
            }
        }
        return new Pixels(width, height, out);
    }

    private void addSample(Pixels image, double u, double v, int[] sum) {
        double w = g * u + h * v + 1;
        image.addSample((a * u + b * v + c) / w, (d * u + e * v + f) / w, sum);
    }

    /** Of so many samples in 256ths. */
    private static int mean(int sum, int n) {
        return (sum / n + 128) >> 8;
    }
}
