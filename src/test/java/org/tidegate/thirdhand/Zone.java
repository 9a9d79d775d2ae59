package org.tidegate.thirdhand;

import java.util.List;

/** Machine readable zones of ICAO 9303 with right check digits. */
final class Zone {

    private static final int[] WEIGHTS = {7, 3, 1};
    private static final int CARD_LINE = 30;
    private static final int PASSPORT_LINE = 44;

    private Zone() {}

    /** The check digit of ICAO 9303 part 3, 4.9: weights 7, 3, 1, letters from A as 10, the filler as 0, modulo 10. */
    static int checkDigit(String text) {
        int sum = 0;
        for (int i = 0; i < text.length(); i++) {
            sum += value(text.charAt(i)) * WEIGHTS[i % WEIGHTS.length];
        }
        return sum % 10;
    }

    private static int value(char c) {
        if (c == '<') {
            return 0;
        }
        return c <= '9' ? c - '0' : c - 'A' + 10;
    }

    /** Two lines of 44 (TD3, part 4). */
    static List<String> ofPassport(Draws draws, Holder holder) {
        String birth = date(draws, 40, 99);
        String expiry = date(draws, 26, 36);
        String optional = filled(draws.coin() ? Words.digits(draws, 9) : "", 14);
        String checked = optional.startsWith("<") ? "<" : String.valueOf(checkDigit(optional));
        String line = withDigit(holder.number())
                + holder.state()
                + withDigit(birth)
                + sex(draws)
                + withDigit(expiry)
                + optional
                + checked;
        String all = line.substring(0, 10) + line.substring(13, 20) + line.substring(21, 43);
        return List.of(
                filled("P<" + holder.state() + holder.surname() + "<<" + holder.given(), PASSPORT_LINE),
                line + checkDigit(all));
    }

    /** Three lines of 30 (TD1, part 5). */
    static List<String> ofCard(Draws draws, Holder holder) {
        String birth = date(draws, 40, 99);
        String expiry = date(draws, 26, 36);
        String first = filled("I<" + holder.state() + withDigit(holder.number()), CARD_LINE);
        String second = withDigit(birth) + sex(draws) + withDigit(expiry) + filled(holder.state(), 14);
        String all = first.substring(5) + second.substring(0, 7) + second.substring(8, 15) + second.substring(18, 29);
        return List.of(first, second + checkDigit(all), filled(holder.surname() + "<<" + holder.given(), CARD_LINE));
    }

    private static String withDigit(String text) {
        return text + checkDigit(text);
    }

    private static String sex(Draws draws) {
        return draws.coin() ? "F" : "M";
    }

    private static String filled(String text, int length) {
        String upper = Words.upper(text).replace(' ', '<');
        return (upper + "<".repeat(length)).substring(0, length);
    }

    private static String date(Draws draws, int fromYear, int beforeYear) {
        return Story.format(
                "%02d%02d%02d",
                fromYear + draws.below(beforeYear - fromYear), 1 + draws.below(12), 1 + draws.below(28));
    }
}
