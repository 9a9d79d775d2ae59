package org.tidegate.rules;

import java.util.List;

@Doc("A letter of plain paragraphs.")
public record Letter(
        @Doc("Subject line: never a name or a result.") Template subject,
        @Doc("Paragraphs in order.") List<Template> paragraphs) {}
