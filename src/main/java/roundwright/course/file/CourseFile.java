package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.Course;
import roundwright.course.CourseSettings;
import roundwright.course.Lesson;
import roundwright.course.file.Section.Kind;
import roundwright.notation.Severity;
import roundwright.notation.Span;
import roundwright.notation.Terms;
import roundwright.pattern.Pattern;
import roundwright.technique.FirstUses;
import roundwright.technique.Technique;
import roundwright.technique.Techniques;

/**
 * A course file as read: the text with its places, the course that it says, and everything that should be known of it.
 *
 * <p>{@code CourseFile.read(text).course()}. Any text can be read; what cannot be understood is a problem with its place. Writing the file is
 * giving back {@code document().text()}.
 *
 * @param parts where the pattern's parts and lines stand in the file, in the order of the pattern's parts
 * @param problems in the order of their places
 */
public record CourseFile(CourseDocument document, Course course, List<PartPlace> parts, List<FileProblem> problems) {
    public CourseFile {
        parts = List.copyOf(parts);
        problems = List.copyOf(problems);
    }

    public static CourseFile read(String text) {
        return read(CourseDocument.of(text));
    }

    public static CourseFile read(CourseDocument document) {
        return new Reading(document).read();
    }

    public String text() {
        return document.text();
    }

    public boolean hasErrors() {
        return problems.stream().anyMatch(FileProblem::isError);
    }

    public Optional<PartPlace> part(String name) {
        return parts.stream().filter(part -> part.name().equals(name)).findFirst();
    }

    /** One reading of one document. */
    private static final class Reading {
        /** No course has more lessons, or techniques of its own; the rest are kept in the file and not read. */
        private static final int MOST = 400;

        private final CourseDocument document;
        private final Problems problems;

        Reading(CourseDocument document) {
            this.document = document;
            this.problems = new Problems(document.text(), Places.of(document.text()));
        }

        CourseFile read() {
            new HeadingChecks(document, problems).check();
            Optional<Section> head = document.course();
            SettingsReader settingsReader = new SettingsReader(head.orElse(emptyHead()), problems);
            CourseSettings settings = settingsReader.read();
            Optional<Terms> stated = settingsReader.terms();
            PatternLines lines = new PatternLines(document.of(Kind.PART), problems);
            Pattern pattern = lines.read(stated);
            Terms terms = pattern.terms();
            List<Technique> own = new TechniqueReader(terms, problems).read(few(document.of(Kind.TECHNIQUE)));
            long errors = problems.errors();
            Techniques techniques = Techniques.catalogue().with(own);
            List<PlacedLesson> lessons = lessons(pattern, techniques);
            boolean allRead = errors == problems.errors();
            Course course = new Course(
                    head.map(section -> section.title().text()).orElse(""),
                    head.map(section -> String.join("\n\n", section.paragraphs()))
                            .orElse(""),
                    settings,
                    FirstUses.of(pattern, techniques),
                    lessons.stream().map(PlacedLesson::lesson).toList());
            check(course, lessons, allRead);
            return new CourseFile(document, course, lines.places(), problems.inOrder());
        }

        private List<Section> few(List<Section> sections) {
            if (sections.size() > MOST) {
                problems.error("too-many-sections", sections.get(MOST).heading(), MOST);
            }
            return sections.subList(0, Math.min(MOST, sections.size()));
        }

        private Section emptyHead() {
            return new Section(
                    Kind.COURSE,
                    new Written("", 0, List.of()),
                    OptionalInt.empty(),
                    Section.Form.RIGHT,
                    new Span(0, 0),
                    new Span(0, 0),
                    List.of(),
                    List.of());
        }

        private List<PlacedLesson> lessons(Pattern pattern, Techniques techniques) {
            LessonReader reader = new LessonReader(pattern.parts(), techniques, pattern.terms(), problems);
            List<Section> sections = few(document.of(Kind.LESSON));
            List<PlacedLesson> lessons = new ArrayList<>();
            for (Section section : sections) {
                lessons.add(reader.read(section, lessons.size() + 1));
            }
            return lessons;
        }

        private void check(Course course, List<PlacedLesson> lessons, boolean allRead) {
            Span end = document.course().map(Section::heading).orElse(new Span(0, 0));
            if (course.pattern().parts().stream().allMatch(part -> part.rounds().isEmpty())) {
                problems.mendable(Severity.ERROR, "no-rounds", end, Optional.empty());
                return;
            }
            if (lessons.isEmpty()) {
                problems.remark("no-lessons", end);
            }
            new LessonChecks(lessons, course.uses(), problems).check(allRead);
            new TechniqueChecks(lessons, course.uses(), problems).check();
        }
    }

    /** The lesson's section in the file. */
    public Optional<Section> section(Lesson lesson) {
        List<Section> sections = document.of(Kind.LESSON);
        int index = course.lessons().indexOf(lesson);
        return index < 0 ? Optional.empty() : Optional.of(sections.get(index));
    }
}
