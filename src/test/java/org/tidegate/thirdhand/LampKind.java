package org.tidegate.thirdhand;

/** Where light comes from, and how strong the direct light is against that from all around. */
enum LampKind {
    WINDOW("window daylight", 0.65, 0.4, false),
    CEILING("ceiling lamp", 0.65, 0.4, false),
    DESK("desk lamp", 0.8, 0.22, true),
    SUN("direct sun", 0.85, 0.22, false),
    OVERCAST("overcast", 0.4, 0.65, false),
    FLASH("phone flash", 0.75, 0.3, true);

    final String label;
    final double key;
    final double ambient;
    /** So near that its light falls off across the picture. */
    final boolean near;

    LampKind(String label, double key, double ambient, boolean near) {
        this.label = label;
        this.key = key;
        this.ambient = ambient;
        this.near = near;
    }

    /** How far from the zenith, as the tangent. */
    double slant(Draws draws) {
        return switch (this) {
            case WINDOW -> draws.between(0.7, 1.6);
            case CEILING -> draws.between(0.15, 0.8);
            case DESK -> draws.between(0.4, 1.1);
            case SUN -> draws.between(0.6, 1.7);
            case OVERCAST -> draws.between(0.1, 0.7);
            case FLASH -> 0.06;
        };
    }

    /** Its size as seen from the table, as the tangent. */
    double softness(Draws draws) {
        return switch (this) {
            case WINDOW -> draws.between(0.25, 0.6);
            case CEILING -> draws.between(0.05, 0.2);
            case DESK -> draws.between(0.04, 0.12);
            case OVERCAST -> 0.9;
            case SUN, FLASH -> 0.012;
        };
    }

    /** How much redder than white. */
    double warmth(Draws draws) {
        return switch (this) {
            case CEILING, DESK -> draws.between(-0.05, 0.45);
            case OVERCAST -> draws.between(-0.2, 0);
            default -> draws.between(-0.12, 0.12);
        };
    }
}
