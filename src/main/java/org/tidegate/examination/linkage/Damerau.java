package org.tidegate.examination.linkage;

/** Damerau's distance in its restricted form (optimal string alignment): inserted, lost, replaced or swapped letters. */
final class Damerau {

    private Damerau() {}

    /** The distance, or {@code most} where it is that or more. */
    static int distance(String a, String b, int most) {
        if (Math.abs(a.length() - b.length()) >= most) {
            return most;
        }
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = row(a, b, i, last, before);
            before = last;
            last = row;
        }
        return Math.min(most, last[b.length()]);
    }

    private static int[] row(String a, String b, int i, int[] last, int[] before) {
        int[] row = new int[b.length() + 1];
        row[0] = i;
        for (int j = 1; j <= b.length(); j++) {
            int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
            row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + change);
            boolean swapped =
                    i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
            if (swapped) {
                row[j] = Math.min(row[j], before[j - 2] + 1);
            }
        }
        return row;
    }
}
