package roundwright.group;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import roundwright.course.Course;
import roundwright.course.CourseSettings;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.notation.Terms;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.PartItem;
import roundwright.pattern.Pattern;
import roundwright.pattern.Round;
import roundwright.pattern.Verdict;
import roundwright.technique.FirstUses;
import roundwright.technique.Techniques;

/** Courses of which only the counts matter. */
public final class TrialCourse {
    /** Tower 6 … 36 and down again in twelve rounds, then a lid of three. */
    public static final Course TOWER =
            of(part("Tower", 6, 12, 18, 24, 30, 36, 36, 36, 30, 24, 18, 12), part("Lid", 6, 12, 18));

    private TrialCourse() {}

    public static Course of(Part... parts) {
        List<Lesson> lessons = new ArrayList<>();
        for (Part part : parts) {
            for (int from = 1; from <= part.rounds().size(); from += 4) {
                RoundRange range = new RoundRange(
                        part.name(), from, Math.min(from + 3, part.rounds().size()));
                lessons.add(new Lesson(
                        lessons.size() + 1,
                        "Evening",
                        List.of(range),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        List.of()));
            }
        }
        CourseSettings settings = new CourseSettings(
                Optional.empty(), Optional.empty(), Optional.empty(), 90, OptionalDouble.empty(), List.of());
        FirstUses uses = FirstUses.of(new Pattern(Terms.UK, List.of(parts)), Techniques.catalogue());
        return new Course("Trial", "", settings, uses, lessons);
    }

    public static Part part(String name, int... counts) {
        List<PartItem> items = IntStream.range(0, counts.length)
                .<PartItem>mapToObj(index -> new Round(
                        index + 1, line(index + 1, counts[index]), Optional.empty(), OptionalInt.of(counts[index])))
                .toList();
        return new Part(name, items.stream().map(PartItem::line).toList(), items);
    }

    private static Line line(int round, int count) {
        return new Line(
                "Rnd " + round + " (" + count + ")",
                0,
                Terms.UK,
                Optional.of(new Line.Label(round, round)),
                Optional.empty(),
                OptionalInt.of(count),
                OptionalInt.empty(),
                Verdict.ADDS_UP,
                List.of(),
                "",
                "");
    }
}
