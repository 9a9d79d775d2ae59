package org.tidegate.thirdhand;

/** The membrane in the window, with its lines, in linear light. */
final class Strip {

    private final CassetteForm form;
    private final Lines lines;
    private final Rgb membrane;
    private final double lineWidth;
    private final boolean sharpEdged;
    private final double controlAt;
    private final double testAt;
    private final double stain;
    private final double width;
    private final double wet;
    private final Rgb dye;
    private final double ghost;
    private final Lines second;

    Strip(Draws draws, CassetteForm form, Lines lines) {
        this.form = form;
        this.lines = lines;
        double white = draws.between(0.78, 0.92);
        membrane = new Rgb(white, white * draws.between(0.95, 1), white * draws.between(0.88, 0.98));
        lineWidth = draws.between(0.7, 1.2);
        sharpEdged = draws.share() >= 0.5;
        double half = draws.between(4.2, 6.5) / 2;
        controlAt = -half + draws.between(-0.5, 0.5);
        testAt = half + draws.between(-0.5, 0.5);
        stain = draws.chance(0.3) ? draws.between(0.05, 0.25) : draws.between(0, 0.03);
        width = draws.between(3.2, 4.4);
        wet = draws.chance(0.4) ? draws.between(0.1, 0.5) : 0;
        dye = dye(draws);
        ghost = lines.test() == 0 && draws.chance(0.05) ? draws.between(0.02, 0.05) : 0;
        second = Lines.ofSecondLane(draws);
    }

    /** What the lines take of red, green and blue: gold is red, latex blue, carbon grey. */
    private static Rgb dye(Draws draws) {
        int lot = draws.below(10);
        if (lot < 6) {
            return new Rgb(draws.between(0.25, 0.5), 1, draws.between(0.6, 0.85));
        }
        if (lot < 7) {
            return new Rgb(0.6, 1, 0.5);
        }
        return lot < 9 ? new Rgb(1, 0.75, 0.35) : new Rgb(1, 0.98, 0.95);
    }

    /** From the middle of the window along u, mm. */
    double controlAt() {
        return controlAt;
    }

    double testAt() {
        return testAt;
    }

    /** At half its depth, mm. */
    double lineWidth() {
        return lineWidth;
    }

    /** How far sample has soaked pads, 0 to 1. */
    double wet() {
        return wet;
    }

    String story() {
        String shade = stain > 0.05 ? " stained" : "";
        String grey = ghost > 0 ? Story.format(" grey ghost at T %.3f", ghost) : "";
        String colour = dye.red() < 1 ? "" : dye.green() > 0.9 ? " grey lines" : " blue lines";
        return shade + grey + colour;
    }

    /** Its light at a place of the cassette; beside the strip the housing's floor. */
    Rgb at(double u, double v, Rgb floor) {
        double across = form.lane(v);
        if (Math.abs(across) > width / 2 && width < form.windowWidth) {
            return floor.times(0.8);
        }
        Lines here = form.duo() && v > 0 ? second : lines;
        double wobble = 0.12 * (Noise.at(across * 0.8, 3, form.seed) - 0.5);
        double x = u - form.windowAt + wobble;
        double dyed = here.control() * profile(x - controlAt, v) + here.test() * profile(x - testAt, v);
        double fibre = 0.97 + 0.05 * Noise.rough(u * 3, v * 3, form.seed, 3);
        Rgb lit = membrane.times(fibre).times(taken(0.35, 1, 0.7, stained(u, v)));
        return lit.times(taken(dye.red(), dye.green(), dye.blue(), dyed)).times(1 - ghostAt(x));
    }

    private static Rgb taken(double red, double green, double blue, double amount) {
        return new Rgb(1 - red * amount, 1 - green * amount, 1 - blue * amount);
    }

    /** Sample that has not run off, more of it towards the well. */
    private double stained(double u, double v) {
        double half = form.windowLength / 2;
        double run = 0.4 + 0.6 * Curves.step(-half, half, u - form.windowAt);
        return stain * run * (0.6 + 0.8 * Noise.rough(u * 0.4, v * 0.9, form.seed + 2, 3));
    }

    /** The dry capture line of some makes shows without dye, as a grey step. */
    private double ghostAt(double x) {
        return ghost * Curves.step(lineWidth * 0.9, lineWidth * 0.5, Math.abs(x - testAt));
    }

    private double profile(double x, double v) {
        double off = Math.abs(x);
        double shape = sharpEdged
                ? Curves.step(lineWidth * 0.68, lineWidth * 0.32, off)
                // 4 ln 2: half of the depth at half of the width
                : Math.exp(-off * off * 2.77 / (lineWidth * lineWidth));
        return off > 0.1 ? shape * (1 - 0.12 * Noise.at(v * 1.5, 8, form.seed)) : shape;
    }
}
