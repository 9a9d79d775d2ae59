package org.tidegate.thirdhand;

/** Whose document it is; all invented, the states by codes that ISO 3166-1 gives to nobody. */
record Holder(String surname, String given, String state, String number) {

    static Holder drawn(Draws draws) {
        return new Holder(
                Words.name(draws, 2 + draws.below(2)),
                Words.name(draws, 2) + (draws.chance(0.4) ? " " + Words.name(draws, 2) : ""),
                draws.oneOf("UTO", "XQA", "ZVL", "XMR", "QQK"),
                capital(draws) + capital(draws) + Words.digits(draws, 7));
    }

    private static String capital(Draws draws) {
        return String.valueOf((char) ('A' + draws.below(26)));
    }
}
