package org.tidegate.examination.subject;

/** Typing slips: one character wrong, missing, too many, or two neighbours swapped (Damerau 1964). */
final class Slips {

    private Slips() {}

    static boolean oneApart(String a, String b) {
        if (Math.abs(a.length() - b.length()) > 1) {
            return false;
        }
        int i = 0;
        int shorter = Math.min(a.length(), b.length());
        while (i < shorter && a.charAt(i) == b.charAt(i)) {
            i++;
        }
        if (a.length() != b.length()) {
            String longer = a.length() > b.length() ? a : b;
            String other = a.length() > b.length() ? b : a;
            return longer.substring(i + 1).equals(other.substring(i));
        }
        if (i == a.length()) {
            return true;
        }
        boolean replaced = a.substring(i + 1).equals(b.substring(i + 1));
        boolean swapped = i + 1 < a.length()
                && a.charAt(i) == b.charAt(i + 1)
                && a.charAt(i + 1) == b.charAt(i)
                && a.substring(i + 2).equals(b.substring(i + 2));
        return replaced || swapped;
    }
}
