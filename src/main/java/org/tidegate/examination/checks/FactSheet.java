package org.tidegate.examination.checks;

import java.util.Map;
import java.util.TreeMap;

/** The named facts that the conditions in {@code rules/checks.yaml} speak of, and the figures that their wording is filled with. */
final class FactSheet {

    private final Map<String, Object> facts = new TreeMap<>();
    private final Map<String, String> figures = new TreeMap<>();

    FactSheet fact(String name, boolean value) {
        facts.put(name, value);
        return this;
    }

    FactSheet fact(String name, String value) {
        facts.put(name, value);
        return this;
    }

    FactSheet fact(String name, long value) {
        facts.put(name, value);
        return this;
    }

    FactSheet figure(String name, String value) {
        figures.put(name, value);
        return this;
    }

    Map<String, Object> facts() {
        return facts;
    }

    Map<String, String> figures() {
        return figures;
    }
}
