package org.tidegate.store;

import java.util.List;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.cfg.DateTimeFeature;
import tools.jackson.databind.json.JsonMapper;

/** Records as JSON text the way the store keeps them: keys in order, times as they were written, offsets included. */
public final class StoredJson {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .disable(DateTimeFeature.ADJUST_DATES_TO_CONTEXT_TIME_ZONE)
            .disable(DateTimeFeature.WRITE_DATES_AS_TIMESTAMPS)
            .disable(DateTimeFeature.WRITE_DURATIONS_AS_TIMESTAMPS)
            .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .build();

    private StoredJson() {}

    public static String write(Object value) {
        return MAPPER.writeValueAsString(value);
    }

    public static byte[] bytes(Object value) {
        return MAPPER.writeValueAsBytes(value);
    }

    /** @throws tools.jackson.core.JacksonException where the text is not of this shape */
    public static <T> T read(String text, Class<T> type) {
        return MAPPER.readValue(text, type);
    }

    /** A list of texts. */
    static List<String> texts(String json) {
        return List.of(MAPPER.readValue(json, String[].class));
    }

    public static <T> T read(byte[] text, Class<T> type) {
        return MAPPER.readValue(text, type);
    }
}
