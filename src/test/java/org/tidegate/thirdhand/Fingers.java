package org.tidegate.thirdhand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One or two fingers of a hand that hold down a thing's edge. */
final class Fingers {

    /** From a thing's middle, by its own axes: out over the end, the start, the lower or the upper side. */
    private enum Edge {
        END(0),
        START(Math.PI),
        LOWER(Math.PI / 2),
        UPPER(-Math.PI / 2);

        private final double out;

        Edge(double out) {
            this.out = out;
        }
    }

    private final Draws draws;
    private final Placed held;
    private final int count;
    private final boolean cassette;
    private final double along;
    private final Skin skin;
    private final long seed;
    private final Edge edge;

    Fingers(Draws draws, Placed held, View view) {
        this.draws = draws;
        this.held = held;
        count = 1 + draws.below(2);
        cassette = held.thing() instanceof Cassette;
        along = draws.share();
        skin = Skin.drawn(draws);
        seed = draws.seed();
        // a cassette is held by its grip, or the result could not be seen
        edge = cassette ? Edge.START : nearest(view);
    }

    String story() {
        return count + " finger(s) on " + (cassette ? "cassette" : "document");
    }

    /** The edge that is most towards the one who takes the picture, more or less. */
    private Edge nearest(View view) {
        double x = held.x() - view.middle().x();
        double y = held.y() - view.middle().y() + 0.25 * view.span();
        double far = Distances.length(x, y - 0.6 * view.span()) + 1;
        record Choice(Edge edge, double merit) {}
        List<Choice> choices = new ArrayList<>();
        for (Edge e : Edge.values()) {
            double out = held.turn() + e.out;
            double merit = (Math.cos(out) * x + Math.sin(out) * y) / far;
            choices.add(new Choice(e, merit + draws.between(0, 0.4)));
        }
        return choices.stream().max(Comparator.comparingDouble(Choice::merit)).orElseThrow().edge;
    }

    List<Placed> placed() {
        List<Placed> placed = new ArrayList<>();
        double slant = 0;
        for (int i = 0; i < count; i++) {
            Finger finger = new Finger(new Draws(seed + i), skin);
            double besides = i - 0.5 * (count - 1);
            double in = cassette ? draws.between(2, 6) : draws.between(5, 16);
            double off = besides * (finger.width() + 1) + draws.between(-6, 6) * (cassette ? 0.3 : 1);
            Placed.Spot tip = tip(in, off);
            if (i == 0) {
                slant = draws.between(-0.25, 0.25);
            }
            double turn = held.turn() + edge.out + slant + draws.between(-0.05, 0.05) - besides * 0.04;
            double x = tip.x() + Math.cos(turn) * finger.halfLength();
            double y = tip.y() + Math.sin(turn) * finger.halfLength();
            placed.add(Placed.flat(finger, x, y, turn).raised(held.base() + (cassette ? 2.5 : 0.5)));
        }
        return placed;
    }

    private Placed.Spot tip(double in, double off) {
        double u = held.thing().halfLength();
        double v = held.thing().halfWidth();
        double slidV = off + (cassette ? 0 : Curves.mix(-0.5, 0.5, along) * v);
        double slidU = off + Curves.mix(-0.6, 0.6, along) * u;
        return switch (edge) {
            case END -> held.world(u - in, slidV);
            case START -> held.world(in - u, slidV);
            case LOWER -> held.world(slidU, v - in);
            case UPPER -> held.world(slidU, in - v);
        };
    }
}
