package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.course.Lesson;
import roundwright.course.file.Section.Kind;
import roundwright.notation.Span;

/**
 * Edits of a course file. Each gives the document as it is afterwards and leaves every byte that it was not meant for as it stood.
 *
 * <p>{@code CourseEdits.of(file).setting("pace", "8 stitches a minute")}. Parts, lessons and lines that are not there are a programming error.
 */
public final class CourseEdits {
    private final CourseFile file;
    private final CourseDocument document;

    private CourseEdits(CourseFile file) {
        this.file = file;
        this.document = file.document();
    }

    public static CourseEdits of(CourseFile file) {
        return new CourseEdits(file);
    }

    private CourseDocument edited(List<TextEdit> edits) {
        return CourseDocument.of(TextEdit.apply(document.text(), edits));
    }

    /** Gives the course another name. */
    public CourseDocument rename(String name) {
        Optional<Section> course = document.course();
        String words = Writing.words(name);
        if (course.isPresent() && course.get().title().span().length() > 0) {
            return edited(List.of(new TextEdit(course.get().title().span(), words)));
        }
        String end = Writing.lineEnd(document.text());
        boolean bare = course.isPresent();
        int mark = document.text().startsWith(CourseDocument.BYTE_ORDER_MARK) ? 1 : 0;
        Span at = bare ? course.get().heading() : new Span(mark, mark);
        return edited(List.of(new TextEdit(at, bare ? "# " + words : "# " + words + end + end)));
    }

    /** Sets a setting of the course, {@code pace}, {@code hook} and so on; empty takes it away. */
    public CourseDocument setting(String key, Optional<String> value) {
        Section course = document.course().orElseThrow(() -> new IllegalStateException("the course has no name yet"));
        return edited(new ItemEdits(document, course, Keys.COURSE)
                .set(key, value.stream().toList())
                .edits());
    }

    /** Sets what a lesson says under a key, one item a value; none takes the key away. */
    public CourseDocument lessonItem(int lesson, String key, List<String> values) {
        return edited(new ItemEdits(document, lessonSection(lesson), Keys.LESSON)
                .set(key, values)
                .edits());
    }

    /** Writes another line of the pattern in place of one; lines of a part are numbered from 0. */
    public CourseDocument line(String part, int index, String line) {
        return lines(part).replace(entry(part, index), line);
    }

    /** Puts a line before the line of that number, or after the last. */
    public CourseDocument insertLine(String part, int index, String line) {
        PartPlace place = place(part);
        int entry = index == place.lines().size() ? place.section().entries().size() : entry(part, index);
        return lines(part).insert(entry, line);
    }

    public CourseDocument removeLine(String part, int index) {
        return lines(part).remove(entry(part, index));
    }

    private LineEdits lines(String part) {
        return new LineEdits(document, place(part).section());
    }

    private PartPlace place(String part) {
        return file.part(part).orElseThrow(() -> new IllegalArgumentException("no part '" + part + "'"));
    }

    /** A part's lines are those of its entries that are not blank. */
    private int entry(String part, int line) {
        PartPlace place = place(part);
        Written written = place.lines().get(line);
        List<Entry> entries = place.section().entries();
        for (int index = 0; index < entries.size(); index++) {
            if (entries.get(index).written().equals(written)) {
                return index;
            }
        }
        throw new IllegalArgumentException("no line " + line + " in " + part);
    }

    /** Gives a part another name, in its heading and in the lessons that name it. */
    public CourseDocument renamePart(String part, String name) {
        PartPlace place = place(part);
        String words = Writing.words(name);
        List<TextEdit> edits = new ArrayList<>();
        edits.add(new TextEdit(place.section().title().span(), words));
        for (Section lesson : document.of(Kind.LESSON)) {
            for (String key : List.of("rounds", "homework")) {
                Values.of(lesson, key).forEach(value -> edits.addAll(renamed(value, part, words)));
            }
        }
        return edited(edits);
    }

    private static List<TextEdit> renamed(Written value, String part, String words) {
        Pattern name = Pattern.compile(
                "(?<![\\p{L}\\d])" + Pattern.quote(part) + "(?=\\s*(?:$|[,;]|(?:rounds?|rnds?)?\\s*\\d))",
                Pattern.CASE_INSENSITIVE);
        Matcher matcher = name.matcher(value.text());
        List<TextEdit> edits = new ArrayList<>();
        while (matcher.find()) {
            edits.add(new TextEdit(value.place(new Span(matcher.start(), matcher.end())), words));
        }
        return edits;
    }

    /** Puts a part after the last, before the lessons. */
    public CourseDocument addPart(String name, List<String> lines) {
        List<Section> lessons = document.of(Kind.LESSON);
        int at = lessons.isEmpty()
                ? document.text().length()
                : lessons.get(0).span().start();
        int number = document.of(Kind.PART).size();
        CourseDocument written = edited(List.of(section(at, List.of("## Part: " + Writing.words(name)))));
        for (String line : lines) {
            Section part = written.of(Kind.PART).get(number);
            written = new LineEdits(written, part).insert(part.entries().size(), line);
        }
        return written;
    }

    public CourseDocument removePart(String part) {
        return edited(List.of(new TextEdit(place(part).section().span(), "")));
    }

    /** Makes the lesson of a number another; only what differs is touched. */
    public CourseDocument lesson(int number, Lesson lesson) {
        return edited(lessonEdits().change(document, lessonSection(number), current(number), lesson));
    }

    /** Puts a lesson before the lesson of that number, or after the last; those that follow are numbered anew. */
    public CourseDocument insertLesson(int number, Lesson lesson) {
        List<Section> lessons = document.of(Kind.LESSON);
        int at = number <= lessons.size() ? lessons.get(number - 1).span().start() : endOfLessons(lessons);
        Lesson numbered = lesson.numbered(number);
        CourseDocument inserted = edited(List.of(section(at, lessonEdits().lines(numbered))));
        return numbered(inserted);
    }

    private int endOfLessons(List<Section> lessons) {
        return lessons.isEmpty()
                ? document.text().length()
                : lessons.get(lessons.size() - 1).span().end();
    }

    /** Takes a lesson away with everything below its heading; those that follow are numbered anew. */
    public CourseDocument removeLesson(int number) {
        return numbered(edited(List.of(new TextEdit(lessonSection(number).span(), ""))));
    }

    /** Makes the lessons these: as many as there are of both are changed, the rest added or taken away. */
    public CourseDocument lessons(List<Lesson> lessons) {
        CourseDocument now = document;
        for (int number = 1;
                number <= Math.max(lessons.size(), file.course().lessons().size());
                number++) {
            CourseEdits edits = number == 1 ? this : of(CourseFile.read(now));
            int there = edits.file.course().lessons().size();
            if (number > lessons.size()) {
                now = edits.removeLesson(lessons.size() + 1);
            } else if (number > there) {
                now = edits.insertLesson(number, lessons.get(number - 1));
            } else {
                now = edits.lesson(number, lessons.get(number - 1).numbered(number));
            }
        }
        return now;
    }

    private LessonEdits lessonEdits() {
        return new LessonEdits(
                file.course().techniques(), file.course().pattern().terms());
    }

    private Section lessonSection(int number) {
        List<Section> lessons = document.of(Kind.LESSON);
        if (number < 1 || number > lessons.size()) {
            throw new IllegalArgumentException("no lesson " + number + " of " + lessons.size());
        }
        return lessons.get(number - 1);
    }

    private Lesson current(int number) {
        return file.course().lessons().get(number - 1);
    }

    /** A section with blank lines round it, at a place between sections. */
    private TextEdit section(int at, List<String> lines) {
        String end = Writing.lineEnd(document.text());
        String before = document.text().substring(0, at);
        boolean closed = before.isBlank() || before.endsWith(end + end);
        boolean ended = closed || before.endsWith(end);
        String gap = closed ? "" : ended ? end : end + end;
        String after = at < document.text().length() ? end : "";
        return TextEdit.insert(at, gap + Writing.lines(document.text(), lines) + after);
    }

    private static CourseDocument numbered(CourseDocument document) {
        List<TextEdit> edits = new ArrayList<>();
        int number = 1;
        for (Section section : document.of(Kind.LESSON)) {
            if (section.number().orElse(number) != number) {
                edits.add(number(document, section, number));
            }
            number++;
        }
        return CourseDocument.of(TextEdit.apply(document.text(), edits));
    }

    private static TextEdit number(CourseDocument document, Section section, int number) {
        Matcher digits = Pattern.compile("\\d+").matcher(document.text());
        digits.region(section.heading().start(), section.heading().end());
        if (!digits.find()) {
            throw new IllegalStateException("no number in " + section.heading().of(document.text()));
        }
        return new TextEdit(new Span(digits.start(), digits.end()), Integer.toString(number));
    }
}
