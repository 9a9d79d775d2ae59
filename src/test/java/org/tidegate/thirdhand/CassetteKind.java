package org.tidegate.thirdhand;

/** Makes of housing one meets, and how often: common practice, no source. */
enum CassetteKind {
    SLIM("slim", 0.26),
    BROAD("broad", 0.42),
    WAIST("waist", 0.57),
    ROUND_ENDS("round ends", 0.69),
    TRAY("tray", 0.80),
    MIDSTREAM("midstream", 0.87),
    DUO("duo", 0.91),
    TAPERED("tapered", 1.00);

    final String label;
    private final double upTo;

    CassetteKind(String label, double upTo) {
        this.label = label;
        this.upTo = upTo;
    }

    static CassetteKind drawn(Draws draws) {
        double lot = draws.share();
        for (CassetteKind kind : values()) {
            if (lot < kind.upTo) {
                return kind;
            }
        }
        return TAPERED;
    }

    /** Whether it is a plain plate with a pressed edge, as the cheap makes are. */
    boolean plate() {
        return switch (this) {
            case SLIM, BROAD, WAIST, ROUND_ENDS -> true;
            default -> false;
        };
    }
}
