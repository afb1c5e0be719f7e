package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import roundwright.course.Lesson;
import roundwright.course.preparation.PrepLine;
import roundwright.wording.Wording;

/** What to mind so that no one is hurt: the teacher's own words first, then the usual cautions; local rules go before all of them. */
final class Cautions {
    private static final Wording WORDS = Wording.of("sheet");

    private Cautions() {}

    static List<String> of(CourseWork work, Lesson lesson) {
        List<String> cautions = new ArrayList<>(lesson.words("caution"));
        add(cautions, ofCourse(work));
        work.prepared(lesson).ifPresent(lines -> add(cautions, texts(lines)));
        cautions.add(WORDS.say("caution-local"));
        return cautions;
    }

    private static void add(List<String> cautions, List<String> more) {
        more.stream().filter(caution -> !Alike.any(cautions, caution)).forEach(cautions::add);
    }

    /** What the teacher says for the whole course. */
    static List<String> ofCourse(CourseWork work) {
        return work.course().settings().words().stream()
                .filter(entry -> entry.key().equals("caution"))
                .map(Lesson.Entry::value)
                .toList();
    }

    private static List<String> texts(List<PrepLine> lines) {
        return lines.stream()
                .filter(line -> line.kind() == PrepLine.Kind.CAUTION)
                .map(PrepLine::text)
                .toList();
    }
}
