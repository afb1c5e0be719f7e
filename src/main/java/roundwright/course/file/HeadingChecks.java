package roundwright.course.file;

import java.util.Locale;
import java.util.Optional;
import roundwright.course.file.Section.Form;
import roundwright.course.file.Section.Kind;
import roundwright.notation.Severity;
import roundwright.notation.Span;
import roundwright.wording.Wording;

/** Checks that the file has one name and that its headings keep their form. */
final class HeadingChecks {
    private static final Wording WORDS = Wording.of("course");

    private final CourseDocument document;
    private final Problems problems;

    HeadingChecks(CourseDocument document, Problems problems) {
        this.document = document;
        this.problems = problems;
    }

    void check() {
        if (document.course().filter(section -> !section.title().isBlank()).isEmpty()) {
            problems.error("no-name", document.course().map(Section::heading).orElse(new Span(0, 0)));
        }
        int lessons = 0;
        for (Section section : document.sections()) {
            lessons += section.kind() == Kind.LESSON ? 1 : 0;
            if (section.kind() == Kind.OTHER && section.heading().length() > 0 && level(section) == 1) {
                problems.error("second-name", section.heading());
            } else if (section.form() != Form.RIGHT) {
                form(section, lessons);
            }
        }
    }

    private int level(Section section) {
        String heading = section.heading().of(document.text()).stripLeading();
        if (!heading.startsWith("#")) {
            return heading.endsWith("=") ? 1 : 2;
        }
        return heading.startsWith("##") ? 2 : 1;
    }

    private void form(Section section, int lesson) {
        String right = right(section, lesson);
        Object shown = section.form() == Form.NO_NUMBER ? lesson : right.substring(3);
        boolean misspelt = section.form() == Form.MISSPELT;
        problems.mendable(
                Severity.WARNING,
                key(section.form()),
                section.heading(),
                Optional.of(right),
                misspelt ? section.heading().of(document.text()).replaceFirst("^\\s*#+\\s*", "") : shown,
                right.substring(3));
    }

    private static String key(Form form) {
        return switch (form) {
            case NO_COLON -> "heading-no-colon";
            case NO_NUMBER -> "heading-no-number";
            case WRONG_LEVEL -> "heading-wrong-level";
            case MISSPELT, RIGHT -> "heading-misspelt";
        };
    }

    private static String right(Section section, int lesson) {
        String word = WORDS.say("heading." + section.kind().name().toLowerCase(Locale.ROOT));
        int shown = section.number().orElse(lesson);
        String number = section.kind() == Kind.LESSON ? " " + shown : "";
        String title = section.title().isBlank() ? "" : " " + section.title().text();
        return "## " + word + number + ":" + title;
    }
}
