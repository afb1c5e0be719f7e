package roundwright.desktop.welcome;

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
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;

/** Makes the text of a course out of a pasted pattern, with lessons split by the planner. */
public final class NewCourses {
    private static final int LONGEST_HEADING = 60;

    private NewCourses() {}

    /** The pattern read out of pasted text: a blank line or a heading begins a part. */
    public static Pattern pattern(String pasted) {
        return PatternReader.readBare(Optional.empty(), pasted);
    }

    /** The name that a pattern gives itself in its first line: few words, and nothing to work. */
    public static Optional<String> heading(String pasted) {
        return pasted.lines()
                .map(line -> line.replaceAll("^[\\s#*_=~-]+|[\\s#*_=~:-]+$", ""))
                .filter(line -> !line.isEmpty())
                .findFirst()
                .filter(line ->
                        line.length() <= LONGEST_HEADING && line.codePoints().anyMatch(Character::isLetter))
                .filter(line -> pattern(line).parts().stream()
                        .allMatch(part -> part.rounds().isEmpty()));
    }

    /**
     * A course file with the pasted pattern and its lessons.
     *
     * @param minutes length of a session
     */
    public static String text(String name, String pasted, int minutes) {
        Pattern pattern = pattern(pasted);
        StringBuilder text = new StringBuilder();
        text.append("# ").append(name.strip().replaceAll("\\s+", " ")).append("\n\n");
        text.append("- terms: ").append(pattern.terms()).append('\n');
        text.append("- session: ").append(minutes).append(" minutes\n");
        pattern.parts().forEach(part -> {
            text.append("\n## Part: ").append(part.name()).append("\n\n");
            part.lines()
                    .forEach(line ->
                            text.append("- ").append(line.text().strip()).append('\n'));
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
        PlanItems items = PlanItems.of(course.pattern(), course.techniques(), PlanItems.USUAL_PACE);
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
