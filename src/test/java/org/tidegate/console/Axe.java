package org.tidegate.console;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** WCAG 2.2 A and AA as far as a machine can tell: axe-core 4.11, deque.com/axe, rules tagged wcag2a to wcag22aa. */
final class Axe {

    private final String script;

    Axe() throws IOException {
        try (var in = Objects.requireNonNull(Axe.class.getResourceAsStream("/axe.min.js"))) {
            script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** What is wrong with the page that the browser shows. */
    List<String> violations(Browser browser) {
        browser.driver.executeScript(script);
        Object found = browser.driver.executeAsyncScript("const done = arguments[arguments.length - 1];"
                + "axe.run({runOnly: ['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa']}).then(r => done(r.violations.map(v =>"
                + " ({id: v.id, where: v.nodes.map(n => n.target.join(' ')).slice(0, 3).join(' | ')}))));");
        return ((List<?>) Objects.requireNonNull(found))
                .stream()
                        .map(v -> ((Map<?, ?>) v).get("id") + " at " + ((Map<?, ?>) v).get("where"))
                        .toList();
    }
}
