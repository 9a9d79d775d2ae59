package org.tidegate.thirdhand;

import java.util.ArrayList;
import java.util.List;

/** Blood beside the well and the dirt of handling. */
record Wear(int seed, List<Smear> smears, double dirt) {

    private static final int PLACES = 4;

    private record Smear(double u, double v, double radius, int seed) {

        Rgb over(double pu, double pv, Rgb plastic) {
            double ragged = 0.7 * (Noise.rough(pu * 0.9, pv * 0.9, seed, 2) - 0.5);
            double r = Distances.length(pu - u, (pv - v) * 1.3) / radius + ragged;
            // dries darker at its edge
            double dense = 0.75 * Curves.step(1.05, 0.85, r) * (0.6 + 0.4 * Curves.step(0.4, 1, r));
            return plastic.times(1 - dense * 0.55, 1 - dense * 0.92, 1 - dense * 0.9);
        }
    }

    static Wear drawn(Draws draws, CassetteForm form) {
        List<Smear> smears = new ArrayList<>();
        for (int i = 0; i < PLACES; i++) {
            double u = form.wellAt + draws.bell() * 6;
            double v = draws.bell() * form.width * 0.25;
            if (draws.chance(0.09)) {
                smears.add(new Smear(u, v, draws.between(0.6, 2.6), form.seed + i));
            }
        }
        double dirt = draws.chance(0.3) ? draws.between(0.03, 0.12) : 0;
        return new Wear(form.seed, List.copyOf(smears), dirt);
    }

    Rgb over(double u, double v, Rgb plastic) {
        Rgb worn = plastic;
        for (Smear smear : smears) {
            worn = smear.over(u, v, worn);
        }
        if (dirt == 0) {
            return worn;
        }
        double cloud = Curves.step(0.5, 0.8, Noise.rough(u * 0.25, v * 0.25, seed + 40, 3));
        double scratch = Curves.step(0.88, 0.94, Noise.at(u * 0.35 + v * 2, v * 0.3 - u * 3, seed + 41));
        double left = 1 - dirt * 2 * cloud - dirt * 2 * scratch;
        return worn.times(left, left, left * (1 - dirt * 0.3));
    }
}
