package org.tidegate.examination.subject;

/** Letters typed for digits inside what can only be a time: o9:47, 1O.15, l0:20, O531. */
final class DigitSlips {

    private DigitSlips() {}

    /** End of the digit group at {@code i} that holds such a letter, else {@code i}. */
    static int end(String s, int i) {
        if (i > 0 && (alike(s.charAt(i - 1)) || Character.isLetter(s.charAt(i - 1)))) {
            return i;
        }
        int end = i;
        boolean letter = false;
        boolean digit = false;
        while (end < s.length() && end - i < 5 && alike(s.charAt(end))) {
            letter |= Character.isLetter(s.charAt(end));
            digit |= Character.isDigit(s.charAt(end));
            end++;
        }
        boolean hour = end - i == 2 && partOfTime(s, i, end);
        boolean compact = end - i == 4
                && digit
                && Character.isLetter(s.charAt(i))
                && s.charAt(i) != 'I'
                && !(end < s.length() && Character.isLetter(s.charAt(end)) && !hoursFollow(s, end));
        return letter && (hour || compact) ? end : i;
    }

    private static boolean hoursFollow(String s, int end) {
        return Character.toLowerCase(s.charAt(end)) == 'h';
    }

    /** Two characters beside a colon or dot whose other side is two of the kind as well, one real digit among the four. */
    private static boolean partOfTime(String s, int start, int end) {
        boolean before = start >= 2 && colon(s.charAt(start - 1)) && Character.isDigit(s.charAt(start - 2));
        boolean after =
                end + 2 < s.length() && colon(s.charAt(end)) && alike(s.charAt(end + 1)) && alike(s.charAt(end + 2));
        boolean digit = Character.isDigit(s.charAt(start)) || Character.isDigit(s.charAt(start + 1));
        return digit && (before || after);
    }

    private static boolean colon(char c) {
        return c == ':' || c == '.';
    }

    private static boolean alike(char c) {
        return Character.isDigit(c) || c == 'o' || c == 'O' || c == 'l' || c == 'I' || c == 'О' || c == 'о';
    }

    static String digits(String group) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < group.length(); i++) {
            char c = group.charAt(i);
            out.append(Character.isDigit(c) ? c : c == 'l' || c == 'I' ? '1' : '0');
        }
        return out.toString();
    }
}
