package org.tidegate.booking;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** A book as JSON (RFC 8259): an array of objects, one a test, whose keys are the column names. */
final class JsonBook {

    private final BookBuilder book = new BookBuilder();
    private final Set<String> unknown = new TreeSet<>();
    private final JsonParser json;

    private JsonBook(JsonParser json) {
        this.json = json;
    }

    static BookResult read(String text) {
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), text)) {
            JsonBook reader = new JsonBook(parser);
            reader.rows();
            return reader.book.result();
        }
    }

    private void rows() {
        try {
            if (json.nextToken() != JsonToken.START_ARRAY) {
                book.fault(line(), "", "this is no JSON array", "write [ {\"ref\": …}, … ]");
                return;
            }
            boolean on = true;
            while (on && json.nextToken() != JsonToken.END_ARRAY) {
                on = row();
            }
        } catch (JacksonException e) {
            book.fault(e.getLocation().getLineNr(), "", "this is not JSON: " + e.getOriginalMessage(), "");
        }
    }

    private boolean row() {
        long line = line();
        if (json.currentToken() != JsonToken.START_OBJECT) {
            book.fault(line, "", "expected an object", "one a test");
            return json.currentToken() != null;
        }
        Map<String, String> cells = new TreeMap<>();
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            cell(cells);
        }
        return book.add(line, cells);
    }

    private void cell(Map<String, String> cells) {
        String name = json.currentName();
        JsonToken value = json.nextToken();
        if (value.isStructStart()) {
            book.fault(line(), name, "expected a text or a number", "");
            json.skipChildren();
        } else if (!Columns.known(name)) {
            if (unknown.add(name)) {
                book.warn(line(), name, "the key is unknown and was left out", "");
            }
        } else if (value != JsonToken.VALUE_NULL && cells.put(name, json.getString()) != null) {
            book.fault(line(), name, "the key is there twice", "keep one");
        }
    }

    private long line() {
        return json.currentTokenLocation().getLineNr();
    }
}
