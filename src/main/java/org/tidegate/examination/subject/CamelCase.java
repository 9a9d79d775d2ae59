package org.tidegate.examination.subject;

/** Names that run into each other, told apart by their capitals: JonasQuist. */
final class CamelCase {

    /** Shorter beginnings belong to the surname: McNab, MacNab, VanDam, DeWit. */
    private static final int SHORTEST_GIVEN = 4;

    private CamelCase() {}

    /** The word with a space before its second capital, or as it is where it has none that begins a name. */
    static String apart(String word) {
        for (int i = SHORTEST_GIVEN; i < word.length() - 1; i++) {
            if (Character.isUpperCase(word.charAt(i))) {
                boolean two = Character.isUpperCase(word.charAt(0))
                        && Character.isLowerCase(word.charAt(i - 1))
                        && Character.isLowerCase(word.charAt(i + 1));
                return two ? word.substring(0, i) + ' ' + word.substring(i) : word;
            }
        }
        return word;
    }
}
