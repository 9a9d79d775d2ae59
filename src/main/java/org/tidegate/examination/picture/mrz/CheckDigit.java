package org.tidegate.examination.picture.mrz;

/** Check digits with weights 7, 3, 1 (ICAO Doc 9303-3 §4.9). */
final class CheckDigit {

    private static final int[] WEIGHTS = {7, 3, 1};

    private CheckDigit() {}

    /** Whether the character is the check digit of the data; a filler stands for 0 only after an empty field. */
    static boolean holds(String data, char digit) {
        if (digit == '<') {
            return data.chars().allMatch(c -> c == '<');
        }
        return digit >= '0' && digit <= '9' && of(data) == digit - '0';
    }

    /** 0–9; −1 where a character is none of a machine-readable zone. */
    static int of(String data) {
        int sum = 0;
        for (int i = 0; i < data.length(); i++) {
            int value = value(data.charAt(i));
            if (value < 0) {
                return -1;
            }
            sum += value * weight(i);
        }
        return sum % 10;
    }

    /** Of the character at that place of the data, counted from 0. */
    static int weight(int at) {
        return WEIGHTS[at % WEIGHTS.length];
    }

    /** 0–35; −1 for what is no character of a machine-readable zone. */
    static int value(char c) {
        if (c >= '0' && c <= '9') {
            return c - '0';
        }
        if (c >= 'A' && c <= 'Z') {
            return c - 'A' + 10;
        }
        return c == '<' ? 0 : -1;
    }
}
