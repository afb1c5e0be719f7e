package roundwright.pattern.check;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import roundwright.notation.Problem;
import roundwright.notation.Severity;
import roundwright.notation.Span;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.Pattern;
import roundwright.wording.Wording;

/** What should be known of the lines of a pattern when it is looked at as a whole. It never finds errors, which are the sums' alone. */
public final class PatternChecks {
    private static final Wording WORDS = Wording.of("pattern");

    private final Map<Line, List<Problem>> found = new IdentityHashMap<>();

    private PatternChecks() {}

    public static PatternChecks of(Pattern pattern) {
        PatternChecks checks = new PatternChecks();
        JoinChecks joins = new JoinChecks(pattern, checks);
        WorkingChecks working = new WorkingChecks(checks);
        ClosingChecks closing = new ClosingChecks(pattern, checks);
        for (Part part : pattern.parts()) {
            joins.check(part);
            working.check(part);
            closing.check(part);
        }
        return checks;
    }

    /** The line's own problems, then those that the whole pattern brings; spans are of the line's text. */
    public List<Problem> problems(Line line) {
        List<Problem> all = new ArrayList<>(line.problems());
        all.addAll(beyond(line));
        return all;
    }

    /** Only what the whole pattern brings for the line. */
    public List<Problem> beyond(Line line) {
        return found.getOrDefault(line, List.of());
    }

    void warning(Line line, String key, Object... arguments) {
        add(Severity.WARNING, line, key, arguments);
    }

    void remark(Line line, String key, Object... arguments) {
        add(Severity.REMARK, line, key, arguments);
    }

    private void add(Severity severity, Line line, String key, Object... arguments) {
        String text = line.text();
        int from = text.length() - text.stripLeading().length();
        Span span = new Span(
                Math.min(from, text.length()),
                Math.max(from, text.stripTrailing().length()));
        found.computeIfAbsent(line, none -> new ArrayList<>())
                .add(new Problem(severity, key, span, WORDS.say("problem." + key, arguments), List.of()));
    }
}
