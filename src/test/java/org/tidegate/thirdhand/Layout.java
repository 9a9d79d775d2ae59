package org.tidegate.thirdhand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts down what the picture is about: cassettes and a document on a support, or in a hand. */
final class Layout {

    /** How high a hand holds what lies in it, mm. */
    private static final double HELD = 17;

    private final Draws draws;
    private final List<String> story = new ArrayList<>();
    private final int cassettes;
    private final boolean document;
    private final Lines lines;
    private final long lightSeed;
    private final double axis;
    private final double disorder;
    private final boolean tidy;
    private Arrangement arrangement;

    Layout(Draws draws) {
        this.draws = draws;
        double lot = draws.share();
        cassettes = lot < 0.1 ? 0 : lot < 0.9 ? 1 : lot < 0.96 ? 2 : lot < 0.985 ? 3 : 4;
        document = draws.chance(0.76);
        Lines drawn = Lines.drawn(draws);
        lines = cassettes > 0 ? drawn : Lines.NONE;
        Support support = new Support(draws);
        boolean held = support.palm() && cassettes > 0;
        story.add(support.palm() && !held ? "plain support" : support.name());
        arrangement = Arrangement.bare(support);
        if (held) {
            arrangement = arrangement.withFlat(Placed.flat(new Palm(draws), 60, draws.between(-8, 8), 0));
        }
        lightSeed = draws.seed();
        double any = draws.turn();
        disorder = draws.chance(0.5) ? 0.08 : 0.5;
        double usual = draws.chance(0.5) ? squared(any) + draws.between(-0.1, 0.1) : any;
        tidy = draws.chance(0.35);
        axis = tidy ? straight() + (draws.coin() ? 0 : Math.PI) : usual;
        for (int i = 0; i < cassettes; i++) {
            putCassette(i == 0);
        }
        if (document) {
            putDocument();
        }
    }

    private static double squared(double turn) {
        return Math.rint(turn / (Math.PI / 2)) * Math.PI / 2;
    }

    private double straight() {
        return draws.bell() * 0.1;
    }

    private void putCassette(boolean first) {
        Cassette cassette = new Cassette(draws, first ? lines : Lines.ofAnother(draws));
        Placed placed = place(cassette, first).raised(arrangement.held() ? HELD : 0);
        if (!arrangement.held()) {
            placed = perhapsPropped(placed, "cassette");
        }
        arrangement = arrangement.with(placed);
        story.add(cassette.name());
    }

    /** The first in the middle, others as near as there is room. */
    private Placed place(Cassette cassette, boolean first) {
        Placed placed = Placed.flat(cassette, 0, 0, 0);
        for (int attempt = 0; attempt < 80; attempt++) {
            double away = first ? 0 : 15 + attempt * 1.2;
            double direction = draws.turn();
            double turn = axis + draws.bell() * disorder + (draws.chance(0.15) ? Math.PI / 2 : 0);
            if (first && arrangement.held()) {
                turn = draws.between(-0.4, 0.4) + (draws.coin() ? Math.PI : 0) + Math.PI / 2 * draws.below(2);
            }
            placed = Placed.flat(cassette, away * Math.cos(direction), away * Math.sin(direction), turn);
            if (arrangement.free(placed, 3)) {
                break;
            }
        }
        return placed;
    }

    private Placed perhapsPropped(Placed placed, String what) {
        if (!draws.chance(0.12)) {
            return placed;
        }
        story.add(what + " propped");
        return placed.propped(draws.between(0.02, 0.1) * draws.sign());
    }

    /** Under the cassettes or beside them, as near as there is room. */
    private void putDocument() {
        Document sheet = new Document(draws);
        double turn = tidy ? straight() : roughlyAligned();
        double direction = draws.turn();
        boolean overlaps = draws.chance(0.12) && cassettes > 0;
        double gap = overlaps ? -draws.between(4, 12) : draws.between(1, 14);
        if (overlaps) {
            story.add("overlap");
        }
        Placed placed = Placed.flat(sheet, 0, 0, turn);
        for (int away = 0; away < 300 && !fits(placed, gap); away++) {
            placed = Placed.flat(sheet, away * Math.cos(direction), away * Math.sin(direction), turn);
        }
        placed = perhapsPropped(placed, "document");
        arrangement = arrangement.withFirst(arrangement.held() ? placed.raised(draws.between(0, 3)) : placed);
        story.add(sheet.name());
    }

    private double roughlyAligned() {
        double quarters = draws.chance(0.6) ? 0 : Math.PI / 2 * draws.below(4);
        return axis + quarters + draws.bell() * disorder;
    }

    private boolean fits(Placed sheet, double gap) {
        boolean shown =
                !arrangement.held() || Sight.hidden(sheet, 1, arrangement.flat(), (spot, height) -> false) < 0.25;
        return shown && arrangement.free(sheet, gap);
    }

    Arrangement arrangement() {
        return arrangement;
    }

    Lines lines() {
        return lines;
    }

    /** Of the light, so that what is put down does not change it. */
    long lightSeed() {
        return lightSeed;
    }

    double axis() {
        return axis;
    }

    List<String> story() {
        return story;
    }

    List<Placed> cassettes() {
        return arrangement.things().stream()
                .filter(p -> p.thing() instanceof Cassette)
                .toList();
    }

    Optional<Placed> document() {
        return arrangement.things().stream()
                .filter(p -> p.thing() instanceof Document)
                .findFirst();
    }
}
