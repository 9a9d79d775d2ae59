package org.tidegate.thirdhand;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/** What lies about without being asked about. */
final class Surroundings {

    private enum Kind {
        PEN,
        COIN,
        KEY,
        CUP,
        SWAB,
        TUBE,
        POUCH,
        BOX,
        PHONE,
        BANK_CARD,
        NOTE,
        COINS;

        Thing drawn(Draws draws) {
            return switch (this) {
                case PEN -> new Pen(draws);
                case COIN -> new Coin(draws, false);
                case KEY -> new Key(draws);
                case CUP -> new Cup(draws);
                case SWAB -> new Swab(draws);
                case TUBE -> new Tube(draws);
                case POUCH -> new Pouch(draws);
                case BOX -> new Box(draws);
                case PHONE -> new Handset(draws);
                case BANK_CARD -> new BankCard(draws);
                case NOTE -> new Note(draws);
                case COINS -> new Coin(draws, true);
            };
        }

        /** Tall things lean into the picture. */
        double gap() {
            return this == CUP || this == BOX ? 12 : 2;
        }
    }

    /** As often as they turn up beside a test: a guess. */
    private static final Kind[] OFTEN = {
        Kind.PEN,
        Kind.PEN,
        Kind.COIN,
        Kind.KEY,
        Kind.CUP,
        Kind.SWAB,
        Kind.SWAB,
        Kind.TUBE,
        Kind.TUBE,
        Kind.POUCH,
        Kind.POUCH,
        Kind.BOX,
        Kind.PHONE,
        Kind.NOTE,
        Kind.COINS,
        Kind.COIN
    };

    private final Draws draws;
    private final View view;
    private final List<String> story = new ArrayList<>();
    private Arrangement arrangement;

    Surroundings(Draws draws, View view, Layout layout) {
        this.draws = draws;
        this.view = view;
        arrangement = layout.arrangement();
        Support support = arrangement.support();
        if (support.newspaper()) {
            sheet(new Newspaper(draws), 60, draws::turn);
        }
        if (support.leaflet() || draws.chance(0.1)) {
            sheet(new Leaflet(draws), 40, () -> layout.axis() + draws.bell() * 0.2);
            if (!support.leaflet()) {
                story.add("leaflet");
            }
        }
        int count = draws.chance(0.35) ? 0 : 1 + draws.below(draws.chance(0.2) ? 6 : 3);
        for (int i = 0; i < count; i++) {
            put(draws.oneOf(OFTEN));
        }
    }

    private void sheet(Thing sheet, double off, DoubleSupplier turn) {
        double x = view.middle().x() + draws.between(-off, off);
        double y = view.middle().y() + draws.between(-off, off);
        arrangement = arrangement.withFlat(Placed.flat(sheet, x, y, turn.getAsDouble()));
    }

    /** Where there is room in the picture, or not at all. */
    private void put(Kind often) {
        Kind kind = draws.chance(0.03) ? Kind.BANK_CARD : often;
        Thing thing = kind.drawn(draws);
        Camera camera = view.camera();
        for (int attempt = 0; attempt < 25; attempt++) {
            Placed.Spot spot = camera.ground(
                    camera.width() * draws.between(-0.02, 1.02), camera.height() * draws.between(-0.02, 1.02));
            Placed placed = Placed.flat(thing, spot.x(), spot.y(), draws.turn());
            if (arrangement.free(placed, kind.gap())) {
                arrangement = arrangement.with(placed);
                story.add(thing.name());
                return;
            }
        }
    }

    Arrangement arrangement() {
        return arrangement;
    }

    List<String> story() {
        return story;
    }
}
