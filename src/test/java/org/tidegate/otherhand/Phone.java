package org.tidegate.otherhand;

import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.SplittableRandom;

/** Projection, light, lens, sensor and the phone's own processing, up to the picture before JPEG. */
final class Phone {

    private final Scene scene;
    private final Camera camera;
    private final Draw draw;
    private final Planes planes;

    Phone(Scene scene, Draw draw) {
        this.scene = scene;
        this.draw = draw;
        camera = scene.camera;
        planes = new Planes(camera.width, camera.height);
    }

    BufferedImage shoot() {
        project();
        optics();
        expose();
        noise();
        develop();
        sharpen();
        return encoded();
    }

    private void project() {
        Illumination light = new Illumination(camera.view(), draw);
        int[] canvas = ((DataBufferInt) scene.canvas.getRaster().getDataBuffer()).getData();
        double[] xy = new double[2];
        double halfX = camera.width / 2.0;
        double halfY = camera.height / 2.0;
        for (int j = 0; j < camera.height; j++) {
            for (int i = 0; i < camera.width; i++) {
                camera.toTable(i, j, xy);
                double rx = i - halfX;
                double ry = j - halfY;
                double corner = (rx * rx + ry * ry) / (halfX * halfX + halfY * halfY);
                double factor = light.at(xy[0], xy[1], corner);
                sample(
                        canvas,
                        (xy[0] - scene.left) * scene.density,
                        (xy[1] - scene.top) * scene.density,
                        factor,
                        j * camera.width + i);
            }
        }
    }

    private void sample(int[] canvas, double x, double y, double factor, int to) {
        int w = scene.canvas.getWidth();
        int h = scene.canvas.getHeight();
        double cx = Math.max(0, Math.min(w - 1.001, x - 0.5));
        double cy = Math.max(0, Math.min(h - 1.001, y - 0.5));
        int ix = (int) cx;
        int iy = (int) cy;
        double fx = cx - ix;
        double fy = cy - iy;
        int at = iy * w + ix;
        for (int c = 0; c < 3; c++) {
            int shift = 16 - 8 * c;
            double upper =
                    Tone.linear(canvas[at] >> shift & 255) * (1 - fx) + Tone.linear(canvas[at + 1] >> shift & 255) * fx;
            double lower = Tone.linear(canvas[at + w] >> shift & 255) * (1 - fx)
                    + Tone.linear(canvas[at + w + 1] >> shift & 255) * fx;
            planes.channel[c][to] = (float) (factor * (upper * (1 - fy) + lower * fy));
        }
    }

    /** Blur by millimetres on the table, so that a line is never wiped out whatever the picture's size. */
    private void optics() {
        Point2D centre = new Point2D.Double(
                scene.left + scene.canvas.getWidth() / (2 * scene.density),
                scene.top + scene.canvas.getHeight() / (2 * scene.density));
        double pixels = camera.density(centre.getX(), centre.getY());
        planes.blur(Math.max(0.55, draw.mostlyLow(0.04, 0.42) * pixels));
        if (draw.chance(0.3)) {
            double reach = draw.mostlyLow(0.1, 0.9) * pixels;
            double angle = draw.turn();
            if (reach > 1) {
                planes.smear(reach * Math.cos(angle), reach * Math.sin(angle));
            }
        }
    }

    /** Exposure for the mean, held so that white things keep their drawing; then the colour of the light. */
    private void expose() {
        int[] counts = new int[512];
        double sum = 0;
        float[] green = planes.channel[1];
        for (float v : green) {
            sum += v;
            counts[(int) Math.min(511, v * 400)]++;
        }
        int bright = 511;
        for (int left = green.length / 100; left > 0; bright--) {
            left -= counts[bright];
        }
        double white = (bright + 1) / 400.0;
        double gain = Math.min(draw.between(0.2, 0.46) / (sum / green.length), draw.between(0.8, 1.25) / white);
        double warm = draw.bell(0.01, 0.095);
        double tint = draw.bell(0, 0.035);
        scale(0, gain * (1 + warm));
        scale(1, gain * (1 + tint));
        scale(2, gain * (1 - 1.2 * warm));
    }

    private void scale(int c, double gain) {
        float[] values = planes.channel[c];
        for (int i = 0; i < values.length; i++) {
            values[i] *= (float) gain;
        }
    }

    private void noise() {
        double shot = draw.mostlyLow(0.00002, 0.0009);
        double read = draw.mostlyLow(0.0006, 0.006);
        double smooth = draw.between(0.35, 0.95);
        SplittableRandom random = new SplittableRandom(draw.seed());
        float[] bell = new float[1 << 16];
        java.util.Random gauss = new java.util.Random(draw.seed());
        for (int i = 0; i < bell.length; i++) {
            bell[i] = (float) gauss.nextGaussian();
        }
        for (int c = 0; c < 3; c++) {
            float[] grain = new float[planes.channel[c].length];
            for (int i = 0; i < grain.length; i++) {
                grain[i] = bell[random.nextInt() & 0xffff];
            }
            grain = planes.blurred(grain, smooth);
            float[] values = planes.channel[c];
            for (int i = 0; i < values.length; i++) {
                values[i] += (float) (grain[i] * 1.6 * Math.sqrt(read * read + shot * Math.max(0, values[i])));
            }
        }
    }

    /** Shoulder, sRGB curve, the phone's contrast and colour; the planes then hold code values 0 to 1. */
    private void develop() {
        double punch = draw.between(0, 0.35);
        double colour = draw.between(0.88, 1.22);
        float[] r = planes.channel[0];
        float[] g = planes.channel[1];
        float[] b = planes.channel[2];
        float[] curve = curve(punch);
        for (int i = 0; i < r.length; i++) {
            float cr = look(curve, r[i]);
            float cg = look(curve, g[i]);
            float cb = look(curve, b[i]);
            float grey = 0.3f * cr + 0.59f * cg + 0.11f * cb;
            r[i] = (float) (grey + colour * (cr - grey));
            g[i] = (float) (grey + colour * (cg - grey));
            b[i] = (float) (grey + colour * (cb - grey));
        }
    }

    private static float[] curve(double punch) {
        float[] curve = new float[4097];
        for (int i = 0; i < curve.length; i++) {
            double linear = i / 2048.0;
            double held = linear < 0.7 ? linear : 0.7 + 0.3 * (1 - Math.exp(-(linear - 0.7) / 0.3));
            double code = Tone.curve(held);
            double bent = code * code * (3 - 2 * code);
            curve[i] = (float) (code + punch * (bent - code));
        }
        return curve;
    }

    private static float look(float[] curve, float linear) {
        float at = Math.max(0, Math.min(4095.99f, linear * 2048));
        int i = (int) at;
        return curve[i] + (at - i) * (curve[i + 1] - curve[i]);
    }

    private void sharpen() {
        double amount = draw.chance(0.75) ? draw.between(0.1, 1.1) : 0;
        float[] luma = new float[planes.channel[0].length];
        for (int i = 0; i < luma.length; i++) {
            luma[i] = 0.3f * planes.channel[0][i] + 0.59f * planes.channel[1][i] + 0.11f * planes.channel[2][i];
        }
        float[] soft = planes.blurred(luma, draw.between(0.8, 1.6));
        for (int i = 0; i < luma.length; i++) {
            float detail = (float) (amount * (luma[i] - soft[i]));
            for (int c = 0; c < 3; c++) {
                planes.channel[c][i] += detail;
            }
        }
    }

    private BufferedImage encoded() {
        BufferedImage image = new BufferedImage(planes.width, planes.height, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = code(0, i) << 16 | code(1, i) << 8 | code(2, i);
        }
        return image;
    }

    private int code(int c, int i) {
        return (int) Math.max(0, Math.min(255, planes.channel[c][i] * 255 + 0.5));
    }
}
