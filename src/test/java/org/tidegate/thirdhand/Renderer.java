package org.tidegate.thirdhand;

import java.util.stream.IntStream;

/** What the camera sees of a lit relief, in linear light. */
final class Renderer {

    /** Pixels; larger pictures are sharp enough with one ray a pixel. */
    private static final int FOUR_RAYS_UP_TO = 5_000_000;

    private static final double BRIGHTEST = 6;
    private static final double DULL = 0.02;
    /** What plastic and paint mirror when looked at straight: refractive index 1.5. */
    private static final double FRESNEL = 0.04;

    private final Relief relief;
    private final Ceiling ceiling;
    private final LightMap map;
    private final Light light;
    private final Camera camera;

    Renderer(Relief relief, Light light, Camera camera) {
        this.relief = relief;
        this.light = light;
        this.camera = camera;
        ceiling = new Ceiling(relief.heights());
        map = new LightMap(relief, ceiling, light);
    }

    Frame render() {
        Frame frame = Frame.empty(camera.width(), camera.height());
        int side = camera.width() * (long) camera.height() < FOUR_RAYS_UP_TO ? 2 : 1;
        IntStream.range(0, camera.height()).parallel().forEach(j -> {
            for (int i = 0; i < camera.width(); i++) {
                frame.set(i, j, pixel(i, j, side));
            }
        });
        return frame;
    }

    private Rgb pixel(int i, int j, int side) {
        Rgb sum = Rgb.grey(0);
        for (int b = 0; b < side; b++) {
            for (int a = 0; a < side; a++) {
                Rgb seen = seen(camera.ray(i + (a + 0.5) / side, j + (b + 0.5) / side));
                sum = sum.plus(new Rgb(
                        Math.min(seen.red(), BRIGHTEST),
                        Math.min(seen.green(), BRIGHTEST),
                        Math.min(seen.blue(), BRIGHTEST)));
            }
        }
        return sum.times(1.0 / (side * side));
    }

    private Rgb seen(Vector ray) {
        Camera.Pixel hit = March.meets(relief, ceiling, camera.place(), ray);
        Grid heights = relief.heights();
        double x = Curves.clamp(hit.x(), 1, heights.width() - 3);
        double y = Curves.clamp(hit.y(), 1, heights.height() - 3);
        int i = (int) x;
        int j = (int) y;
        Vector normal = normal(heights, i, j);
        double facing = light.lamp().facing(relief.tableX(x), relief.tableY(y), normal);
        double seen = map.seen(x, y);
        double open = map.open(x, y);
        Rgb lit = light.diffuse(map.field(x, y) * seen * facing, open * (0.65 + 0.35 * normal.z()));
        Rgb diffuse = colour(i, j, x - i, y - j).times(lit);
        double gloss = relief.gloss(i, j);
        if (gloss <= DULL) {
            return diffuse;
        }
        double mirrored = mirrored(ray, normal, gloss) * (0.4 + 0.6 * Math.max(seen, 0.3)) * open;
        return diffuse.plus(light.mirrorColour().times(mirrored));
    }

    private Rgb colour(int i, int j, double a, double b) {
        Rgb above = relief.colour(i, j).mix(relief.colour(i + 1, j), a);
        return above.mix(relief.colour(i, j + 1).mix(relief.colour(i + 1, j + 1), a), b);
    }

    private Vector normal(Grid z, int i, int j) {
        double across = z.cell(i + 1, j) - z.cell(i - 1, j) + z.cell(i + 1, j + 1) - z.cell(i - 1, j + 1);
        double along = z.cell(i, j + 1) - z.cell(i, j - 1) + z.cell(i + 1, j + 1) - z.cell(i + 1, j - 1);
        double perMm = relief.scale() / 4;
        return new Vector(-Curves.clamp(across * perMm, -3, 3), -Curves.clamp(along * perMm, -3, 3), 1).unit();
    }

    private double mirrored(Vector ray, Vector normal, double gloss) {
        double facing = ray.dot(normal);
        Vector away = ray.plus(normal, -2 * facing);
        // Schlick's approximation
        double share = FRESNEL + (1 - FRESNEL) * Math.pow(1 - Curves.clamp(-facing, 0, 1), 5);
        return Math.min(1, share * 1.2) * (0.15 + 0.85 * gloss) * light.mirrored(away, 1 - gloss);
    }
}
