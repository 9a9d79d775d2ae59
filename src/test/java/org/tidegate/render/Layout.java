package org.tidegate.render;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** Where cards and cassettes of a test picture lie: stacked with gaps, each turned a little or a quarter, the stack turned at any angle. */
final class Layout {

    /** Beyond any table that a picture shows. */
    private static final double FAR = 400;

    private static final double[] ASIDE = {-1, -0.5, 0, 0.5, 1};

    private final Draws draws;
    private final List<Placed> things = new ArrayList<>();
    private final List<Stage.Finger> fingers = new ArrayList<>();
    private final double turn;

    Layout(List<BufferedImage> sheets, Draws draws) {
        this.draws = draws;
        this.turn = 2 * Math.PI * draws.random().nextDouble();
        List<Double> turns = sheets.stream().map(this::own).toList();
        double down = 0;
        for (int i = 0; i < sheets.size(); i++) {
            double half = reach(sheets.get(i), turns.get(i)) / 2;
            down += half + (i == 0 ? 0 : draws.in(1, 7));
            things.add(new Placed(sheets.get(i), -down * Math.sin(turn), down * Math.cos(turn), turn + turns.get(i)));
            down += half;
        }
        centre();
    }

    /** A sheet's own turn within the stack: mostly along it, either way round; at times crosswise. */
    private double own(BufferedImage sheet) {
        double quarter = draws.oneIn(8) ? Math.PI / 2 : 0;
        return quarter + (draws.oneIn(2) ? Math.PI : 0) + draws.in(-0.1, 0.1, -0.2, 0.2);
    }

    private static double reach(BufferedImage sheet, double turn) {
        return (Math.abs(Math.sin(turn)) * sheet.getWidth() + Math.abs(Math.cos(turn)) * sheet.getHeight())
                / Paint.SCALE;
    }

    private void centre() {
        double[] box = box();
        double x = (box[0] + box[2]) / 2;
        double y = (box[1] + box[3]) / 2;
        things.replaceAll(t -> new Placed(t.sheet(), t.x() - x, t.y() - y, t.cos(), t.sin()));
    }

    /** Left, upper, right, lower bound of all that lies there, millimetres; a hand's breadth if nothing does. */
    double[] box() {
        double[] box = {-30, -30, 30, 30};
        if (!things.isEmpty()) {
            box = new double[] {FAR, FAR, -FAR, -FAR};
        }
        for (Placed t : things) {
            for (int i = 0; i < 4; i++) {
                double[] corner = at(t, (i & 1) * 2 - 1.0, (i >> 1) * 2 - 1.0);
                box[0] = Math.min(box[0], corner[0]);
                box[1] = Math.min(box[1], corner[1]);
                box[2] = Math.max(box[2], corner[0]);
                box[3] = Math.max(box[3], corner[1]);
            }
        }
        return box;
    }

    /** Place on the table of a point on a sheet, -1 to 1 along and across it. */
    private static double[] at(Placed t, double along, double across) {
        double u = along * t.widthMm() / 2;
        double v = across * t.heightMm() / 2;
        return new double[] {t.x() + u * t.cos() - v * t.sin(), t.y() + u * t.sin() + v * t.cos()};
    }

    /** Something beside them, if it finds a free place. */
    void add(BufferedImage clutter) {
        double[] box = box();
        for (int attempt = 0; attempt < 12; attempt++) {
            Placed placed = new Placed(
                    clutter,
                    draws.in(box[0] - 40, box[2] + 40),
                    draws.in(box[1] - 40, box[3] + 40),
                    2 * Math.PI * draws.random().nextDouble());
            if (things.stream().noneMatch(t -> touches(placed, t))) {
                things.add(placed);
                return;
            }
        }
    }

    private static boolean touches(Placed one, Placed other) {
        return covers(one, other) || covers(other, one);
    }

    private static boolean covers(Placed one, Placed other) {
        for (double along : ASIDE) {
            for (double across : ASIDE) {
                double[] place = at(other, along, across);
                if (one.outside(place[0], place[1]) < 3) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A finger or two over the end of a thing, where the participant holds it, and over nothing else: of a cassette the end away from the well. */
    void hold(int index, boolean cassette, double[] skin) {
        Placed t = things.get(index);
        double end = cassette || draws.oneIn(2) ? 1 : -1;
        double in = draws.in(2, 6, 6, 9);
        int many = draws.oneIn(2) ? 2 : 1;
        for (int i = 0; i < many; i++) {
            double across = many == 1 ? draws.in(-0.4, 0.4) : i - 0.5;
            double[] tip = at(t, end * (1 - 2 * in / t.widthMm()), across);
            double[] out = at(t, end * (1 + 2 * 160 / t.widthMm()), across + draws.in(-0.5, 0.5));
            Stage.Finger finger = new Stage.Finger(out[0], out[1], tip[0], tip[1], draws.in(6, 9), skin);
            if (things.stream().noneMatch(other -> other != t && hides(finger, other))) {
                fingers.add(finger);
            }
        }
    }

    private static boolean hides(Stage.Finger finger, Placed thing) {
        for (double along : ASIDE) {
            for (double across : ASIDE) {
                double[] place = at(thing, along, across);
                if (finger.outside(place[0], place[1]) < 1) {
                    return true;
                }
            }
        }
        return false;
    }

    List<Placed> things() {
        return List.copyOf(things);
    }

    List<Stage.Finger> fingers() {
        return List.copyOf(fingers);
    }
}
