package roundwright.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import roundwright.notation.Problem;
import roundwright.pattern.Line;
import roundwright.pattern.check.PatternChecks;
import roundwright.technique.Techniques;

/**
 * A line of a pattern as a value for JSON: {@code text, terms, label, takes, makes, stated, available, verdict, techniques, problems, words}.
 * Offsets of problems are of the line's text.
 */
final class LineJson {
    private LineJson() {}

    /** The fields in their order; the caller puts the file and the line's number before them. */
    static Map<String, Object> of(Line line, Techniques techniques, PatternChecks checks) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("text", line.text());
        json.put("terms", line.terms());
        json.put("label", line.label().map(label -> List.of(label.first(), label.last())));
        json.put("takes", line.takes());
        json.put("makes", line.makes());
        json.put("stated", line.stated());
        json.put("available", line.available());
        json.put("verdict", line.verdict().word());
        json.put("techniques", techniques.uses(line));
        json.put("problems", checks.problems(line).stream().map(LineJson::of).toList());
        json.put("words", line.words());
        return json;
    }

    /** {@code from, to, message, suggestion, severity}. */
    static Map<String, Object> of(Problem problem) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("from", problem.span().start());
        json.put("to", problem.span().end());
        json.put("message", problem.message());
        json.put("suggestion", problem.suggestion());
        json.put("severity", problem.severity().name().toLowerCase(Locale.ROOT));
        return json;
    }
}
