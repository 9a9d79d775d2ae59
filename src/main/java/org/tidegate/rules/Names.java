package org.tidegate.rules;

import java.util.Locale;

/** How Java names are written in rule files. */
final class Names {

    private Names() {}

    /** {@code ownHosts} → {@code own_hosts}. */
    static String snake(String camel) {
        return camel.replaceAll("(?<!^)([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }
}
