package org.tidegate.thirdhand;

/** What all lies on: one of many kinds, turned and scaled, on some with crumbs. */
final class Support {

    private enum Kind {
        WOOD("wood"),
        DARK_WOOD("dark wood"),
        MARBLE("marble"),
        BLACK_GLASS("black glass"),
        WHITE_DESK("white desk"),
        CLOTH("cloth"),
        CHECKERED("checkered cloth"),
        TERRAZZO("terrazzo"),
        NEWSPAPER("newspaper"),
        KITCHEN_TOWEL("kitchen towel"),
        LEAFLET("leaflet"),
        BED_COVER("bed cover"),
        PALM("palm"),
        GRANITE("granite"),
        BAMBOO("bamboo planks"),
        DESK("coloured desk"),
        TILES("tiles"),
        STRIPES("stripes cloth");

        private final String label;

        Kind(String label) {
            this.label = label;
        }
    }

    /** A surface by its own axes, mm. */
    interface Pattern {
        Surface at(double x, double y);
    }

    private final Kind kind;
    private final double cos;
    private final double sin;
    private final double scale;
    private final Pattern pattern;
    private final Crumbs crumbs;

    Support(Draws draws) {
        kind = draws.oneOf(Kind.values());
        int seed = draws.noiseSeed();
        double turn = draws.turn();
        cos = Math.cos(turn);
        sin = Math.sin(turn);
        scale = draws.between(0.7, 1.5);
        double size = draws.share();
        double extra = draws.share();
        crumbs = new Crumbs(seed, extra < 0.3);
        Swatch swatch = swatch(draws, seed, size, extra);
        pattern = pattern(swatch);
    }

    private Swatch swatch(Draws draws, int seed, double size, double extra) {
        double hue = draws.share();
        double saturation = Math.pow(draws.between(0.2, 0.8), 1.7);
        double value = draws.between(0.25, 0.9);
        Rgb first =
                switch (kind) {
                    case WOOD, BAMBOO ->
                        Rgb.ofHsv(draws.between(0.06, 0.1), draws.between(0.25, 0.6), draws.between(0.6, 0.88));
                    case DARK_WOOD ->
                        Rgb.ofHsv(draws.between(0.03, 0.08), draws.between(0.45, 0.75), draws.between(0.25, 0.45));
                    case BLACK_GLASS -> Rgb.ofHsv(0.6, 0.1, draws.between(0.06, 0.2));
                    case WHITE_DESK, MARBLE, KITCHEN_TOWEL, TILES ->
                        Rgb.ofHsv(draws.between(0.05, 0.15), draws.between(0, 0.06), draws.between(0.85, 0.96));
                    case NEWSPAPER, LEAFLET, PALM ->
                        Rgb.ofHsv(draws.between(0.06, 0.12), 0.08, draws.between(0.5, 0.9));
                    case GRANITE -> Rgb.ofHsv(hue, 0.08, draws.between(0.3, 0.6));
                    default -> Rgb.ofHsv(hue, saturation, value);
                };
        double darker = draws.between(0.35, 0.7);
        Rgb third = draws.chance(0.5)
                ? Rgb.ofHsv(0.1, 0.05, 0.93)
                : Rgb.ofHsv(draws.share(), draws.between(0.05, 0.4), draws.between(0.45, 0.95));
        return new Swatch(seed, size, extra, first, first.times(darker, darker * 0.93, darker * 0.85), third);
    }

    private Pattern pattern(Swatch swatch) {
        return switch (kind) {
            case WOOD, DARK_WOOD -> new Wood(swatch, 95);
            case BAMBOO -> new Wood(swatch, 22);
            case MARBLE -> (x, y) -> Stones.marble(swatch, x, y);
            case GRANITE -> (x, y) -> Stones.granite(swatch, x, y);
            case TERRAZZO -> new Terrazzo(swatch);
            case BLACK_GLASS -> (x, y) -> Boards.glass(swatch, x, y);
            case WHITE_DESK, DESK -> (x, y) -> Boards.desk(swatch, x, y);
            case TILES -> (x, y) -> Boards.tiles(swatch, x, y);
            case KITCHEN_TOWEL -> (x, y) -> Fabrics.towel(swatch, x, y);
            case CLOTH -> Fabrics.cloth(swatch, (x, y) -> 0);
            case CHECKERED -> Fabrics.cloth(swatch, Fabrics.checks(swatch));
            case STRIPES -> Fabrics.cloth(swatch, Fabrics.stripes(swatch));
            case BED_COVER -> Fabrics.bedCover(swatch);
            case NEWSPAPER, LEAFLET, PALM -> (x, y) -> Boards.plain(swatch, x, y);
        };
    }

    String name() {
        return kind.label;
    }

    boolean newspaper() {
        return kind == Kind.NEWSPAPER;
    }

    boolean leaflet() {
        return kind == Kind.LEAFLET;
    }

    /** Whether a hand holds the things over it. */
    boolean palm() {
        return kind == Kind.PALM;
    }

    /** At a place of the table. */
    Surface at(double x, double y) {
        // away from the lattice's origin, where patterns are symmetric
        double u = (x * cos + y * sin) * scale + 900;
        double v = (-x * sin + y * cos) * scale + 700;
        return crumbs.over(x, y, pattern.at(u, v));
    }
}
