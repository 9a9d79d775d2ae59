package org.tidegate.thirdhand;

/** The top of a cassette as moulded. */
record CassetteRelief(CassetteForm form) {

    /** Above the table, mm; NaN beside the cassette. */
    double height(double u, double v) {
        double outside = form.outline(u, v);
        if (outside > 0) {
            return Double.NaN;
        }
        double z = edge(outside);
        z = switch (form.kind) {
            case TRAY -> tray(u, v, z);
            case MIDSTREAM -> tip(u, v, z);
            default -> z;
        };
        double window = form.window(u, v);
        double well = form.well(u, v);
        return z + ridges(u, v) - groove(u, v) + lips(window, well) - windowDepth(u, v, window) - wellDepth(well);
    }

    private double edge(double outside) {
        double in = Curves.clamp(-outside / form.bevel, 0, 1);
        return form.thick * 0.55 + form.thick * 0.45 * Math.sqrt(1 - (1 - in) * (1 - in));
    }

    private double tray(double u, double v, double z) {
        double rim = Distances.roundedBox(u, v, form.length / 2 - 3.2, form.width / 2 - 3.2, form.corner);
        return z * 0.72
                + form.thick * 0.28 * Curves.step(0.5, -0.9, rim)
                - 0.5 * Curves.step(1.2, 0.6, Math.abs(rim - 1.5));
    }

    /** The felt tip that is held into the sample. */
    private double tip(double u, double v, double z) {
        if (!isFelt(u)) {
            return u > form.length * 0.36 ? z - 0.9 : z;
        }
        return z - 0.9 + 0.12 * Noise.at(u * 4, v * 4, form.seed);
    }

    boolean isFelt(double u) {
        return form.midstream() && u > form.length * 0.37;
    }

    private double ridges(double u, double v) {
        boolean there = u > form.gripFrom && u < form.gripTo && Math.abs(v) < form.width * 0.34;
        return there ? 0.3 * Math.abs(Math.sin((u - form.gripFrom) * Math.PI / form.gripPitch)) : 0;
    }

    private double groove(double u, double v) {
        if (!form.pressed || !form.kind.plate()) {
            return 0;
        }
        double path = Distances.roundedBox(u - form.wellAt, v, 8, form.width * 0.36, 3);
        return 0.25 * Curves.step(0.4, 0, Math.abs(path) - 0.15);
    }

    private double lips(double window, double well) {
        return form.lip * (Curves.step(1.3, 0.5, Math.abs(window - 0.7)) + Curves.step(1.1, 0.4, Math.abs(well - 0.6)));
    }

    private double windowDepth(double u, double v, double window) {
        if (window >= 0) {
            return 0;
        }
        double down = Curves.clamp(-window / form.chamfer, 0, 1);
        double depth = form.depth * (0.25 * down + 0.75 * Curves.step(0.75, 1.05, down));
        return down < 1 ? depth : depth - 0.03 * Noise.at(u * 6, v * 6, form.seed);
    }

    private double wellDepth(double well) {
        return well < 0 ? form.depth * 1.1 * Curves.step(0, form.wellWidth * 0.38, -well) : 0;
    }
}
