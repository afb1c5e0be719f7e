package roundwright.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads one JSON value back into maps, lists, strings, doubles, booleans and null. */
final class ReadJson {
    private ReadJson() {}

    @SuppressWarnings("unchecked")
    static Map<String, Object> object(String text) {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            parser.nextToken();
            Map<String, Object> value = (Map<String, Object>) value(parser);
            if (parser.nextToken() != null) {
                throw new IllegalArgumentException("more than one value: " + text);
            }
            return value;
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> map(parser);
            case START_ARRAY -> list(parser);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> null;
            default -> parser.getText();
        };
    }

    private static Map<String, Object> map(JsonParser parser) throws IOException {
        Map<String, Object> map = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            parser.nextToken();
            map.put(name, value(parser));
        }
        return map;
    }

    private static List<Object> list(JsonParser parser) throws IOException {
        List<Object> list = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            list.add(value(parser));
        }
        return list;
    }
}
