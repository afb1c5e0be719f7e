package roundwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class JsonTest {
    @Test
    void valuesAreWrittenInOrder() {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("takes", OptionalInt.of(12));
        value.put("makes", OptionalInt.empty());
        value.put("label", List.of(3, 3));
        value.put("text", Optional.of("\"×\"\n"));
        value.put("share", 0.25);
        value.put("whole", 2.0);
        value.put("odd", Double.NaN);
        value.put("true", true);
        assertEquals(
                "{\"takes\":12,\"makes\":null,\"label\":[3,3],\"text\":\"\\\"×\\\"\\n\",\"share\":0.25,\"whole\":2,"
                        + "\"odd\":null,\"true\":true}",
                Json.line(value));
    }
}
