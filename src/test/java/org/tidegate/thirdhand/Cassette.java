package org.tidegate.thirdhand;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** A test cassette: relief, print, and the strip with its lines. */
final class Cassette implements Thing {

    /** Anti-aliased edges of the outline lie within. */
    private static final double MARGIN = 0.2;

    private final CassetteForm form;
    private final CassetteRelief relief;
    private final Plastic plastic;
    private final Wear wear;
    private final Strip strip;
    private final CassettePrint print;

    Cassette(Draws draws, Lines lines) {
        form = new CassetteForm(draws);
        relief = new CassetteRelief(form);
        plastic = Plastic.drawn(draws);
        wear = Wear.drawn(draws, form);
        strip = new Strip(draws, form, lines);
        print = new CassettePrint(draws, form, strip, plastic);
    }

    CassetteForm form() {
        return form;
    }

    double lineWidth() {
        return strip.lineWidth();
    }

    @Override
    public double halfLength() {
        return form.length / 2 + MARGIN;
    }

    @Override
    public double halfWidth() {
        return form.width / 2 + MARGIN;
    }

    @Override
    public String name() {
        return form.kind.label + " " + plastic.name() + " cassette" + strip.story();
    }

    @Override
    public double height(double u, double v) {
        return relief.height(u, v);
    }

    @Override
    public double gloss(double u, double v) {
        boolean soaks = form.window(u, v) < -form.chamfer || form.well(u, v) < -form.wellWidth * 0.3;
        return soaks ? 0.05 + strip.wet() * 0.4 : plastic.shine();
    }

    @Override
    public void paint(Graphics2D g) {
        g.setColor(plastic.colour());
        g.fill(new Rectangle2D.Double(-halfLength(), -halfWidth(), 2 * halfLength(), 2 * halfWidth()));
        print.paint(g);
    }

    @Override
    public Rgb finish(double u, double v, Rgb painted) {
        double window = form.window(u, v);
        double well = form.well(u, v);
        if (well < -form.wellWidth * 0.34) {
            return pad(u, v);
        }
        if (window < -form.chamfer * 0.92) {
            return strip.at(u, v, painted);
        }
        if (window < 0) {
            return painted.times(0.93 + 0.07 * Curves.clamp(1 + window / form.chamfer, 0, 1));
        }
        return relief.isFelt(u) ? felt(u, v) : wear.over(u, v, painted);
    }

    private Rgb felt(double u, double v) {
        double light = 0.72 + 0.1 * Noise.at(u * 3, v * 3, form.seed);
        return new Rgb(light, light * 0.98, light * (0.95 - strip.wet() * 0.3));
    }

    /** The sample pad at the bottom of the well. */
    private Rgb pad(double u, double v) {
        double light = 0.7 + 0.15 * Noise.at(u * 3, v * 3, form.seed);
        double soaked = strip.wet() * Curves.step(1, 0.2, Distances.length(u - form.wellAt, v) / form.wellWidth);
        return new Rgb(light, light * (0.98 - soaked * 0.5), light * (0.94 - soaked * 0.45));
    }
}
