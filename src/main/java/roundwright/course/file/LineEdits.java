package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import roundwright.notation.Span;

/**
 * Edits of the lines of one section. Words that CommonMark would take for a mark of its own are written so that they are read as meant: each way
 * of writing them is tried on the whole document, the plainest first.
 */
final class LineEdits {
    private final CourseDocument document;
    private final int number;
    private final Section section;
    private final Places places;

    LineEdits(CourseDocument document, Section section) {
        this.document = document;
        this.number = document.sections().indexOf(section);
        this.section = section;
        this.places = Places.of(document.text());
    }

    private List<String> texts() {
        return section.entries().stream().map(entry -> entry.written().text()).toList();
    }

    CourseDocument replace(int index, String line) {
        Span old = section.entries().get(index).written().span();
        List<String> wanted = new ArrayList<>(texts());
        wanted.set(index, line.strip());
        String words = Writing.words(line);
        return firstThatReads(
                wanted,
                Stream.of(words, Writing.guarded(words))
                        .map(tried -> new TextEdit(old, tried))
                        .toList());
    }

    CourseDocument remove(int index) {
        Span lines = places.wholeLines(section.entries().get(index).span());
        return CourseDocument.of(TextEdit.apply(document.text(), List.of(new TextEdit(lines, ""))));
    }

    /** The line stands before the line of that index, or after the last. */
    CourseDocument insert(int index, String line) {
        List<String> wanted = new ArrayList<>(texts());
        wanted.add(index, line.strip());
        String words = Writing.words(line);
        int at = place(index);
        String end = Writing.lineEnd(document.text());
        boolean open = at == document.text().length()
                && !document.text().endsWith("\n")
                && !document.text().endsWith("\r");
        String before = (open ? end : "") + (section.entries().isEmpty() ? end : "");
        List<TextEdit> tries = Stream.of(
                        margin(index) + words,
                        margin(index) + Writing.guarded(words),
                        "- " + words,
                        "- " + Writing.guarded(words))
                .flatMap(tried -> Stream.of(tried + end, end + tried + end, end + tried + end + end))
                .map(tried -> TextEdit.insert(at, before + tried))
                .toList();
        return firstThatReads(wanted, tries);
    }

    private int place(int index) {
        if (section.entries().isEmpty()) {
            return places.wholeLines(section.heading()).end();
        }
        boolean last = index == section.entries().size();
        Span lines = places.wholeLines(
                section.entries().get(last ? index - 1 : index).span());
        return last ? lines.end() : lines.start();
    }

    private String margin(int index) {
        if (section.entries().isEmpty()) {
            return "- ";
        }
        Entry neighbour = section.entries().get(Math.max(0, index - 1));
        return Writing.margin(document.text(), places, neighbour);
    }

    private CourseDocument firstThatReads(List<String> wanted, List<TextEdit> tries) {
        CourseDocument edited = document;
        for (TextEdit tried : tries) {
            edited = CourseDocument.of(TextEdit.apply(document.text(), List.of(tried)));
            if (reads(edited, wanted)) {
                return edited;
            }
        }
        return edited;
    }

    private boolean reads(CourseDocument edited, List<String> wanted) {
        return edited.sections().size() == document.sections().size()
                && edited.sections().get(number).entries().stream()
                        .map(entry -> entry.written().text())
                        .toList()
                        .equals(wanted);
    }
}
