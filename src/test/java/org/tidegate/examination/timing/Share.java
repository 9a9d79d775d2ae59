package org.tidegate.examination.timing;

/** The share of each seeded simulation that is played: a tenth, all of it with {@code -Pproof}. */
final class Share {

    static final double OF_SIMULATIONS = Double.parseDouble(System.getProperty("simulation.share", "0.1"));

    private Share() {}
}
