package roundwright.desktop.welcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.Course;
import roundwright.course.file.CourseEdits;
import roundwright.course.file.CourseFile;
import roundwright.course.planning.CannotPlan;
import roundwright.course.planning.LessonsOfPlan;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanRequest;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.Planner;
import roundwright.notation.LineReader;
import roundwright.notation.Terms;
import roundwright.notation.WrittenLine;
import roundwright.pattern.PartText;
import roundwright.pattern.PastedPattern;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;
import roundwright.pattern.SourceLine;

/** Makes the text of a course out of a pasted pattern, with lessons split by the planner. */
public final class NewCourses {
    private static final int LONGEST_HEADING = 60;

    private NewCourses() {}

    /** The pattern read out of pasted text, with its parts as its headings name them. */
    public static Pattern pattern(String pasted) {
        PastedPattern cut = PastedPattern.of(pasted);
        return PatternReader.read(Optional.of(terms(pasted)), parts(cut));
    }

    /** What a page says about its terms may stand anywhere on it. */
    private static Terms terms(String pasted) {
        return PatternReader.readBare(Optional.empty(), pasted).terms();
    }

    /** The parts; what is said of the stitches before the first belongs to it, since the rounds are read by it. */
    private static List<PartText> parts(PastedPattern cut) {
        List<PartText> parts = new ArrayList<>(cut.parts());
        if (!parts.isEmpty()) {
            List<SourceLine> lines = new ArrayList<>(
                    cut.before().stream().filter(NewCourses::tellsOfStitches).toList());
            lines.addAll(parts.get(0).lines());
            parts.set(0, new PartText(parts.get(0).name(), lines));
        }
        return parts;
    }

    private static boolean tellsOfStitches(SourceLine line) {
        return LineReader.read(line.text()).stitches();
    }

    /** The name that a pattern gives itself in its first line: few words, and nothing to work. */
    public static Optional<String> heading(String pasted) {
        return firstLine(pasted)
                .filter(line ->
                        line.length() <= LONGEST_HEADING && line.codePoints().anyMatch(Character::isLetter))
                .filter(line -> {
                    WrittenLine read = LineReader.read(line);
                    return read.label().isEmpty() && !read.stitches();
                });
    }

    private static Optional<String> firstLine(String pasted) {
        return pasted.lines()
                .map(NewCourses::bare)
                .filter(line -> !line.isEmpty())
                .findFirst();
    }

    /** A line without the marks that would make it a heading or a list in a course file. */
    private static String bare(String line) {
        return line.replaceAll("^[\\s#*_=~>•·+-]+|[\\s#*_=~:-]+$", "").replaceFirst("^(\\d+)[.)]\\s", "$1: ");
    }

    /** A line as an item of a list: without what would make it a quotation, a heading, a rule or a list in the list. */
    private static String listed(String line) {
        return line.strip()
                .replaceFirst("^(?:[>#•·]+\\s*|[-+]\\s+|[-=~`_]{3,}\\s*|(?:[*]\\s*){3,}$)+", "")
                .replaceFirst("^(\\d+)[.)](?=\\s)", "$1:")
                .replaceFirst("^([*])\\s+", "$1");
    }

    /**
     * A course file with the pasted pattern and its lessons.
     *
     * @param minutes length of a session
     */
    public static String text(String name, String pasted, int minutes) {
        PastedPattern cut = PastedPattern.of(pasted);
        StringBuilder text = new StringBuilder();
        text.append("# ").append(name.strip().replaceAll("\\s+", " ")).append("\n\n");
        text.append("- terms: ").append(terms(pasted)).append('\n');
        text.append("- session: ").append(minutes).append(" minutes\n");
        cut.before().stream()
                .filter(line -> cut.parts().isEmpty() || !tellsOfStitches(line))
                .map(line -> bare(line.text()))
                .filter(line -> !line.isEmpty() && !line.equals(name.strip()))
                .forEach(line -> text.append('\n').append(line).append('\n'));
        parts(cut).forEach(part -> {
            text.append("\n## Part: ").append(part.name()).append("\n\n");
            part.lines()
                    .forEach(line ->
                            text.append("- ").append(listed(line.text())).append('\n'));
        });
        return withLessons(text.toString(), minutes);
    }

    private static String withLessons(String text, int minutes) {
        CourseFile file = CourseFile.read(text);
        return plan(file.course(), minutes)
                .map(plan -> CourseEdits.of(file)
                        .lessons(LessonsOfPlan.of(plan, List.of()))
                        .text())
                .orElse(text);
    }

    private static Optional<Plan> plan(Course course, int minutes) {
        PlanSettings settings = new PlanSettings(minutes, PlanItems.USUAL_PACE, PlanSettings.USUAL_MOST_NEW, 0);
        PlanItems items = PlanItems.of(course.uses(), PlanItems.USUAL_PACE);
        if (items.items().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Planner.plan(PlanRequest.of(items.items(), settings, OptionalInt.empty())));
        } catch (CannotPlan cannot) {
            return Optional.empty();
        }
    }
}
