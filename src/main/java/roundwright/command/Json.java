package roundwright.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Writes plain values as one line of JSON: maps (in their order), lists, strings, numbers, booleans, null and optionals.
 *
 * <p>{@code Json.line(Map.of("takes", OptionalInt.empty()))} is <code>{"takes":null}</code>.
 */
public final class Json {
    private static final JsonFactory FACTORY =
            JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();

    private Json() {}

    public static String line(Object value) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = FACTORY.createGenerator(text)) {
            write(generator, value);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return text.toString();
    }

    private static void write(JsonGenerator generator, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            writeObject(generator, map);
        } else if (value instanceof Iterable<?> list) {
            writeArray(generator, list);
        } else if (value instanceof Number || value instanceof OptionalInt || value instanceof OptionalDouble) {
            writeNumber(generator, value);
        } else if (value instanceof Boolean truth) {
            generator.writeBoolean(truth);
        } else if (value instanceof Optional<?> optional) {
            write(generator, optional.orElse(null));
        } else if (value == null) {
            generator.writeNull();
        } else {
            generator.writeString(value.toString());
        }
    }

    private static void writeObject(JsonGenerator generator, Map<?, ?> map) throws IOException {
        generator.writeStartObject();
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            generator.writeFieldName(entry.getKey().toString());
            write(generator, entry.getValue());
        }
        generator.writeEndObject();
    }

    private static void writeArray(JsonGenerator generator, Iterable<?> list) throws IOException {
        generator.writeStartArray();
        for (Object element : list) {
            write(generator, element);
        }
        generator.writeEndArray();
    }

    private static void writeNumber(JsonGenerator generator, Object value) throws IOException {
        if (value instanceof OptionalInt optional) {
            write(generator, optional.isPresent() ? (Object) optional.getAsInt() : null);
        } else if (value instanceof OptionalDouble optional) {
            write(generator, optional.isPresent() ? (Object) optional.getAsDouble() : null);
        } else if (value instanceof Integer || value instanceof Long) {
            generator.writeNumber(((Number) value).longValue());
        } else {
            writeDouble(generator, ((Number) value).doubleValue());
        }
    }

    /** JSON knows neither NaN nor infinity; a whole number is written without its ".0". */
    private static void writeDouble(JsonGenerator generator, double value) throws IOException {
        if (!Double.isFinite(value)) {
            generator.writeNull();
        } else if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            generator.writeNumber((long) value);
        } else {
            generator.writeNumber(value);
        }
    }
}
