package org.tidegate.thirdhand;

/** Kinds of document; how often each turns up is a guess. Sizes by ISO/IEC 7810: cards are ID-1, passports ID-3. */
enum DocumentKind {
    CARD_FRONT("id card front", 0.30, 85.6, 54),
    CARD_BACK("id card front+zone back", 0.47, 85.6, 54),
    LICENCE("licence card", 0.62, 85.6, 54),
    PASSPORT_PAGE("passport page", 0.82, 125, 88),
    OPEN_PASSPORT("open passport", 0.94, 125, 88),
    UPRIGHT_CARD("id card vertical", 1.00, 54, 85.6);

    final String label;
    private final double upTo;
    /** Of the page that is painted, mm. */
    final double width;

    final double height;

    DocumentKind(String label, double upTo, double width, double height) {
        this.label = label;
        this.upTo = upTo;
        this.width = width;
        this.height = height;
    }

    static DocumentKind drawn(Draws draws) {
        double lot = draws.share();
        for (DocumentKind kind : values()) {
            if (lot < kind.upTo) {
                return kind;
            }
        }
        return UPRIGHT_CARD;
    }

    boolean passport() {
        return this == PASSPORT_PAGE || this == OPEN_PASSPORT;
    }

    /** Whether it shows a machine readable zone. */
    boolean zone() {
        return this == CARD_BACK || passport();
    }

    double sleevedShare() {
        return switch (this) {
            case CARD_FRONT, CARD_BACK, LICENCE -> 0.18;
            case PASSPORT_PAGE -> 0.12;
            default -> 0;
        };
    }

    /** How far the painted page's middle is below the document's. */
    double pageOffset() {
        return this == OPEN_PASSPORT ? height / 2 : 0;
    }
}
