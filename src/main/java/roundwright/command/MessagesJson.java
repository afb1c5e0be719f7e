package roundwright.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import roundwright.group.messages.Earlier;
import roundwright.group.messages.Finding;
import roundwright.group.messages.Reading;
import roundwright.group.messages.Unplaced;
import roundwright.notation.Span;

/** What was found in a text, as one JSON array: readings with their counts, and what could not be placed. */
final class MessagesJson {
    private MessagesJson() {}

    static List<Map<String, Object>> of(String text, List<Finding> findings) {
        return findings.stream().map(finding -> object(text, finding)).toList();
    }

    private static Map<String, Object> object(String text, Finding finding) {
        return finding instanceof Reading reading ? reading(text, reading) : unplaced(text, (Unplaced) finding);
    }

    private static Map<String, Object> reading(String text, Reading reading) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("student", reading.student());
        object.put("part", reading.part());
        object.put("from", reading.from());
        object.put("to", reading.to());
        object.put("count", reading.count());
        object.put("pulled_back", reading.pulledBack());
        object.put("confidence", reading.confidence());
        object.put("at", reading.at());
        place(object, reading.source());
        object.put("text", reading.source().of(text));
        object.put("inferred", reading.inferred());
        object.put(
                "before", reading.before().stream().map(MessagesJson::earlier).toList());
        return object;
    }

    private static Map<String, Object> earlier(Earlier earlier) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("count", earlier.count());
        object.put("pulled_back", earlier.pulledBack());
        object.put("at", earlier.at());
        place(object, earlier.source());
        return object;
    }

    private static Map<String, Object> unplaced(String text, Unplaced unplaced) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("unplaced", unplaced.source().of(text));
        place(object, unplaced.source());
        object.put("reason", unplaced.reason().word());
        object.put("student", unplaced.student());
        object.put("rounds", unplaced.rounds());
        object.put("number", unplaced.count());
        return object;
    }

    private static void place(Map<String, Object> object, Span span) {
        object.put("source", List.of(span.start(), span.end()));
    }
}
