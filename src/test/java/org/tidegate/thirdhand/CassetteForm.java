package org.tidegate.thirdhand;

/**
 * The measures of a cassette, mm: u runs from the grip to the well, so the control line is on the grip's side. Usual sizes of
 * the trade: common practice, no source.
 */
final class CassetteForm {

    final int seed;
    final CassetteKind kind;
    final double length;
    final double width;
    final double thick;
    final double corner;
    final double bevel;
    final double windowLength;
    final double windowWidth;
    final double windowCorner;
    final double windowAt;
    final double depth;
    final double chamfer;
    final double wellAt;
    final double wellLength;
    final double wellWidth;
    final double gripFrom;
    final double gripTo;
    final double gripPitch;
    final double lip;
    final boolean pressed;
    final double place;

    CassetteForm(Draws draws) {
        seed = draws.noiseSeed();
        kind = CassetteKind.drawn(draws);
        Body usual = Body.usual(draws);
        windowLength = draws.between(13, 19);
        windowWidth = draws.between(3.2, 5);
        depth = draws.between(1.2, 2.2);
        chamfer = draws.between(0.4, 1.6);
        double well = draws.between(0.27, 0.36);
        Body body = usual.of(kind, draws);
        length = body.length;
        width = body.width;
        thick = body.thick;
        corner = body.corner;
        bevel = body.bevel;
        wellAt = length * well;
        windowCorner = draws.chance(0.5) ? windowWidth / 2 + chamfer * 0.5 : draws.between(0.4, 1.4);
        windowAt = (midstream() ? draws.between(-0.12, 0.05) : draws.between(-0.1, 0.03)) * length;
        boolean oval = draws.chance(0.5);
        wellWidth = draws.between(2.4, 3.6);
        wellLength = oval ? wellWidth * draws.between(1.25, 1.7) : wellWidth;
        gripFrom = -length / 2 + draws.between(2.5, 5);
        double ridged = draws.chance(0.6) ? gripFrom + draws.between(6, 12) : gripFrom;
        lip = draws.chance(0.4) ? draws.between(0.3, 0.8) : 0;
        pressed = draws.chance(0.4);
        gripPitch = draws.between(1.2, 2.2);
        gripTo = midstream() ? gripFrom : beforeWindow(ridged);
        place = draws.share();
    }

    private record Body(double length, double width, double thick, double corner, double bevel) {

        static Body usual(Draws draws) {
            return new Body(
                    draws.between(66, 74),
                    draws.between(18.5, 21.5),
                    draws.between(3.8, 5.2),
                    draws.between(1.5, 4),
                    draws.between(0.8, 2));
        }

        Body of(CassetteKind kind, Draws draws) {
            return switch (kind) {
                case BROAD -> new Body(length, draws.between(24, 31), thick, draws.between(2, 6), bevel);
                case ROUND_ENDS -> new Body(length, width, thick, width / 2 - 0.05, bevel);
                case TRAY -> new Body(length, draws.between(23, 27), thick, draws.between(1.5, 3), bevel);
                case MIDSTREAM -> stick(draws);
                case DUO -> new Body(length, draws.between(34, 42), thick, 4, bevel);
                default -> this;
            };
        }

        private static Body stick(Draws draws) {
            double length = draws.between(105, 138);
            double width = draws.between(14, 21);
            double corner = draws.between(4, 7);
            return new Body(length, width, draws.between(5, 8), corner, 3.5);
        }
    }

    private double beforeWindow(double ridged) {
        boolean tooNear = windowEnd() < ridged + 3;
        return tooNear ? Math.max(gripFrom, windowEnd() - 6) : ridged;
    }

    boolean midstream() {
        return kind == CassetteKind.MIDSTREAM;
    }

    /** Two strips side by side. */
    boolean duo() {
        return kind == CassetteKind.DUO;
    }

    /** Where the window's rim begins on the grip's side. */
    double windowEnd() {
        return windowAt - windowLength / 2 - chamfer;
    }

    /** How far a strip's middle is from the cassette's. */
    double laneOffset() {
        return duo() ? width * 0.22 : 0;
    }

    /** v from the middle of the strip that is nearest. */
    double lane(double v) {
        return duo() ? Math.abs(v) - laneOffset() : v;
    }

    /** The room for print between grip and window along u. */
    double room() {
        return windowEnd() - Math.max(gripTo, -length / 2 + 3) - 1;
    }

    double outline(double u, double v) {
        double half = halfWidth(u);
        return Distances.roundedBox(u, v, length / 2, half, Math.min(corner, half));
    }

    private double halfWidth(double u) {
        return width / 2
                - switch (kind) {
                    case WAIST -> width * 0.12 * Curves.bump(u - length * (place * 0.3 - 0.1), length * 0.1);
                    case TAPERED -> width * 0.16 * Curves.step(-0.1 * length, -0.5 * length, u);
                    case MIDSTREAM -> width * 0.14 * Curves.step(0.22 * length, 0.36 * length, u);
                    default -> 0;
                };
    }

    /** From the rim of the window; the strip shows where it is below {@code -chamfer}. */
    double window(double u, double v) {
        double half = windowWidth / 2 + chamfer;
        double round = Math.min(windowCorner + chamfer, half - 0.01);
        return Distances.roundedBox(u - windowAt, lane(v), windowLength / 2 + chamfer, half, round);
    }

    /** From the rim of the well, or far where there is none. */
    double well(double u, double v) {
        if (midstream()) {
            return 9;
        }
        return (Distances.length((u - wellAt) / wellLength, lane(v) / wellWidth) - 1) * wellWidth;
    }
}
