package roundwright.course.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.notation.Span;
import roundwright.notation.Terms;
import roundwright.technique.Technique;
import roundwright.technique.Techniques;

/** Writes lessons into a document: only what differs from what is there is touched. */
final class LessonEdits {
    private final Techniques techniques;
    private final Terms terms;

    LessonEdits(Techniques techniques, Terms terms) {
        this.techniques = techniques;
        this.terms = terms;
    }

    /** The edits that make a lesson's section say another lesson. */
    List<TextEdit> change(CourseDocument document, Section section, Lesson from, Lesson to) {
        List<TextEdit> edits = new ArrayList<>();
        if (!from.name().equals(to.name())) {
            edits.add(heading(document, section, to));
        }
        Map<String, List<String>> before = items(from);
        Map<String, List<String>> after = items(to);
        ItemEdits items = new ItemEdits(document, section, Keys.LESSON);
        for (String key : Keys.LESSON.inOrder()) {
            List<String> wanted = after.getOrDefault(key, List.of());
            if (!before.getOrDefault(key, List.of()).equals(wanted)) {
                items.set(key, wanted);
            }
        }
        edits.addAll(items.edits());
        return edits;
    }

    private static TextEdit heading(CourseDocument document, Section section, Lesson lesson) {
        String words = Writing.words(lesson.name());
        Span title = section.title().span();
        boolean named = title.length() > 0 && section.form() == Section.Form.RIGHT;
        return named
                ? new TextEdit(title, words)
                : new TextEdit(section.heading(), "## Lesson " + lesson.number() + ": " + words);
    }

    /** A lesson as a section of its own. */
    List<String> lines(Lesson lesson) {
        List<String> lines = new ArrayList<>();
        lines.add("## Lesson " + lesson.number() + ": " + Writing.words(lesson.name()));
        lines.add("");
        items(lesson)
                .forEach((key, values) -> values.forEach(value -> lines.add("- " + key + ": " + Writing.words(value))));
        return lines;
    }

    private Map<String, List<String>> items(Lesson lesson) {
        Map<String, List<String>> items = new LinkedHashMap<>();
        if (!lesson.rounds().isEmpty()) {
            items.put("rounds", List.of(rounds(lesson.rounds())));
        }
        if (!lesson.introduces().isEmpty()) {
            items.put("new", List.of(names(lesson.introduces())));
        }
        lesson.minutes().ifPresent(minutes -> items.put("minutes", List.of(minutes.toString())));
        for (Lesson.Entry entry : lesson.words()) {
            items.computeIfAbsent(entry.key(), key -> new ArrayList<>()).add(entry.value());
        }
        return items;
    }

    static String rounds(List<RoundRange> ranges) {
        return ranges.stream()
                .map(range ->
                        range.part() + " " + range.first() + (range.last() > range.first() ? "-" + range.last() : ""))
                .collect(Collectors.joining(", "));
    }

    private String names(List<String> ids) {
        return ids.stream()
                .map(id -> techniques
                        .get(id)
                        .map((Technique technique) -> technique.name(terms))
                        .orElse(id))
                .collect(Collectors.joining(", "));
    }
}
