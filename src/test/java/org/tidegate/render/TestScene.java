package org.tidegate.render;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A rendered photo with its truth, for measuring the finders: kits, colours, handwriting, tables, cards and pages, places, hands, things beside
 * them, camera, light and compression drawn from a seed.
 *
 * @param cassettes how many lie in view, none to three
 * @param document whether an identity document lies there
 * @param test strength of the test line of every cassette, 0 for none
 * @param control strength of their control lines, 0 for no cassette
 */
public record TestScene(BufferedImage image, int cassettes, boolean document, double test, double control) {

    private static final int LONG_SIDE = 960;
    private static final int SHORT_SIDE = 720;

    /** A photo shows more pixels where more lies on the table, so that a line of a cassette stays some pixels wide. */
    private static final double LEAST_PIXELS_A_MM = 4.4;

    private static final List<Integer> COUNTS = List.of(0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 3);
    private static final List<double[]> SKINS =
            List.of(new double[] {224, 180, 150}, new double[] {150, 104, 78}, new double[] {90, 62, 48});
    private static final List<double[]> SKINS_KEPT =
            List.of(new double[] {240, 204, 190}, new double[] {188, 138, 104});

    /**
     * @param unseen with settings from the ranges kept back for the final measurement
     * @param lined whether the cassettes have a test line, of at least a tenth
     */
    public static TestScene draw(long seed, boolean unseen, boolean lined) {
        return draw(new Draws(seed, unseen), lined ? 0.1 : 0, lined ? 0.9 : 0, COUNTS, o -> o);
    }

    /** One cassette, its test line of just that strength. */
    public static TestScene withLine(long seed, boolean unseen, double strength) {
        return draw(new Draws(seed, unseen), strength, strength, List.of(1), o -> o);
    }

    /** A step of a ladder of blur: one seed gives one scene, at any defocus (radius in pixels). */
    public static TestScene blurred(long seed, double radius) {
        return draw(
                new Draws(seed, false), 0.5, 0.5, List.of(1), o -> o.moved(0).defocused(radius));
    }

    private static TestScene draw(
            Draws draws, double faintest, double strongest, List<Integer> counts, UnaryOperator<Optics> camera) {
        int cassettes = draws.of(counts);
        boolean document = draws.random().nextInt(3) > 0;
        double test = draws.in(faintest, strongest);
        double control = cassettes > 0 ? draws.in(0.4, 0.95) : 0;
        List<BufferedImage> sheets = new ArrayList<>();
        if (document) {
            sheets.add(CardPainter.paint(CardLook.drawn(draws)));
        }
        for (int i = 0; i < cassettes; i++) {
            sheets.add(CassettePainter.paint(CassetteLook.drawn(draws, test, control), draws.random()));
        }
        Layout layout = new Layout(sheets, draws);
        double[] box = layout.box();
        hands(layout, document, cassettes, draws);
        while (draws.oneIn(3)) {
            layout.add(Clutter.any(draws));
        }
        LinearImage image = new Stage(Table.drawn(draws), layout.things(), layout.fingers(), view(box, draws)).draw();
        camera.apply(Optics.drawn(draws)).apply(image, draws.random());
        return new TestScene(
                JpegFile.reread(image.coded(), draws.in(0.6, 0.93, 0.45, 0.6)), cassettes, document, test, control);
    }

    private static void hands(Layout layout, boolean document, int cassettes, Draws draws) {
        double[] skin = draws.of(SKINS, SKINS_KEPT);
        int sheets = cassettes + (document ? 1 : 0);
        if (sheets > 0 && draws.oneIn(4)) {
            int held = draws.random().nextInt(sheets);
            layout.hold(held, !document || held > 0, skin);
        }
    }

    /** Upright or across, filling the picture as people do. */
    private static View view(double[] box, Draws draws) {
        boolean tall = draws.oneIn(3);
        double aspect = tall ? (double) SHORT_SIDE / LONG_SIDE : (double) LONG_SIDE / SHORT_SIDE;
        double widthMm = Math.max(box[2] - box[0], (box[3] - box[1]) * aspect) * draws.in(1.12, 1.5, 1.5, 1.7);
        double least = LEAST_PIXELS_A_MM * widthMm / (tall ? SHORT_SIDE : LONG_SIDE);
        double scale = Math.max(1, least);
        int width = (int) Math.round(scale * (tall ? SHORT_SIDE : LONG_SIDE));
        int height = (int) Math.round(scale * (tall ? LONG_SIDE : SHORT_SIDE));
        return new View(width, height, widthMm, lean(draws), lean(draws));
    }

    private static double lean(Draws draws) {
        return (draws.oneIn(2) ? 1 : -1) * draws.in(0, 0.28, 0.28, 0.36);
    }
}
