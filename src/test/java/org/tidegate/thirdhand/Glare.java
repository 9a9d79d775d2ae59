package org.tidegate.thirdhand;

/** A bright pane overhead, mirrored in glossy things: often where it is in the way, else far off. */
final class Glare {

    private final boolean inView;
    private final double x;
    private final double y;
    private final double halfLength;
    private final double halfWidth;
    private final double turn;
    private final double power;

    Glare(Draws draws, LampKind kind) {
        inView = draws.chance(0.35);
        halfLength = draws.between(0.1, 0.45);
        halfWidth = draws.between(0.1, 0.5);
        turn = draws.between(0, Math.PI);
        double pane = draws.between(4, 24);
        x = inView ? draws.between(-0.35, 0.35) : draws.between(1.2, 2) * draws.sign();
        y = inView ? draws.between(-0.35, 0.35) : draws.between(-1.5, 1.5);
        // with the flash the room is dark
        power = kind == LampKind.FLASH ? 0 : pane;
    }

    String story() {
        return inView ? "+glare" : "";
    }

    /** Its mirror image in a direction given for one step up. */
    double mirrored(double rx, double ry, double rough) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        double along = (rx - x) * c + (ry - y) * s;
        double across = -(rx - x) * s + (ry - y) * c;
        double blur = 0.02 + rough * 0.35;
        double pane = inside(along, halfLength, blur) * inside(across, halfWidth, blur);
        boolean mullionSeen = rough < 0.25;
        return power * (mullionSeen ? pane * (1 - 0.8 * (1 - Curves.step(0.01, 0.03, Math.abs(along)))) : pane);
    }

    private static double inside(double at, double half, double blur) {
        return Curves.step(-half - blur, -half + blur, at) - Curves.step(half - blur, half + blur, at);
    }
}
