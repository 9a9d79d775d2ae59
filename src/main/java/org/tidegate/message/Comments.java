package org.tidegate.message;

/** RFC 5322 §3.2.2 comments. */
final class Comments {

    private Comments() {}

    /** The text with comments, nested ones included, replaced by a space; quoted strings are left alone. */
    static String strip(String text) {
        StringBuilder out = new StringBuilder(text.length());
        int depth = 0;
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\' && i + 1 < text.length()) {
                if (depth == 0) {
                    out.append(c).append(text.charAt(i + 1));
                }
                i++;
            } else if (quoted || (c == '"' && depth == 0)) {
                quoted = c != '"' || !quoted;
                out.append(c);
            } else if (c == '(') {
                depth++;
                out.append(depth == 1 ? " " : "");
            } else if (c == ')' && depth > 0) {
                depth--;
            } else if (depth == 0) {
                out.append(c);
            }
        }
        return out.toString();
    }
}
