package org.tidegate.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;

/** The one JSON shape of all commands: snake_case keys in the order of the records, absent facts left out. */
final class Json {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_ABSENT))
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .build();

    private Json() {}

    static String text(Object value) {
        return MAPPER.writeValueAsString(value);
    }

    /** @throws tools.jackson.core.JacksonException where the text is no JSON */
    static JsonNode tree(String text) {
        return MAPPER.readTree(text);
    }
}
