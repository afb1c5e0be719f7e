package roundwright.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import roundwright.course.Course;
import roundwright.course.CourseSettings;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.notation.Span;
import roundwright.notation.Stitch;
import roundwright.notation.Terms;
import roundwright.pattern.Instruction;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.PartItem;
import roundwright.pattern.Pattern;
import roundwright.pattern.Round;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;
import roundwright.pattern.Verdict;
import roundwright.technique.FirstUses;
import roundwright.technique.Techniques;

/** A course built by hand, so that what is shown can be tested without anything being read. */
public final class SampleCourse {
    private SampleCourse() {}

    /** A lighthouse in three parts: a tower that changes colour, a gallery, a roof. */
    public static Course lighthouse() {
        List<Part> parts = List.of(
                part(
                        "Tower", 8, 16, 24, 32, 40, 48, 48, 48, 48, 44, 44, 44, 40, 40, -1, 40, 38, 38, 38, 36, 32, 32,
                        28, 28),
                part("Gallery", 28, 36, 36, 32, 28),
                part("Roof", 6, 12, 18, 24, 30, 30));
        List<Lesson> lessons = List.of(
                lesson(1, "Into the ring", new RoundRange("Tower", 1, 5)),
                lesson(2, "A flat base", new RoundRange("Tower", 6, 9)),
                lesson(3, "The wall; first decrease", new RoundRange("Tower", 10, 14)),
                lesson(4, "Red and cream", new RoundRange("Tower", 15, 23)),
                lesson(5, "The gallery", new RoundRange("Gallery", 1, 5)),
                lesson(6, "Roof; joining up", new RoundRange("Roof", 1, 6)));
        CourseSettings settings = new CourseSettings(
                Optional.of("4 mm"),
                Optional.of("aran, 90 g cream"),
                Optional.empty(),
                90,
                OptionalDouble.of(11),
                List.of());
        return new Course("Harbour light", "", settings, uses(parts), lessons);
    }

    /** A piece of one part whose rounds have the counts; a count of -1 is a change to red. */
    public static Course piece(int... counts) {
        CourseSettings settings = new CourseSettings(
                Optional.empty(), Optional.empty(), Optional.empty(), 90, OptionalDouble.empty(), List.of());
        return new Course("Piece", "", settings, uses(List.of(part("Body", counts))), List.of());
    }

    private static FirstUses uses(List<Part> parts) {
        return FirstUses.of(new Pattern(Terms.UK, parts), Techniques.catalogue());
    }

    private static Lesson lesson(int number, String name, RoundRange rounds) {
        return new Lesson(number, name, List.of(rounds), List.of(), List.of(), Optional.empty(), List.of());
    }

    private static Part part(String name, int... counts) {
        List<PartItem> items = new ArrayList<>();
        int number = 1;
        int below = 0;
        for (int count : counts) {
            if (count < 0) {
                items.add(new Instruction(line("Change to red.", Optional.empty(), OptionalInt.empty())));
            } else {
                items.add(round(number++, count, below));
                below = count;
            }
        }
        return new Part(name, items.stream().map(PartItem::line).toList(), items);
    }

    /** A round that gets from one count to the next by increases or decreases spread over it. */
    public static Round round(int number, int count, int below) {
        Optional<Steps> steps = Optional.of(new Steps(steps(count, below), Optional.empty()));
        Line line = line("Rnd " + number + ": (" + count + ")", steps, OptionalInt.of(count));
        return new Round(number, line, steps, OptionalInt.of(count));
    }

    private static List<Step> steps(int count, int below) {
        List<Step> steps = new ArrayList<>();
        int shaped = Math.abs(count - below);
        int plain = below == 0 ? count : Math.min(count, below) - shaped;
        int each = shaped == 0 || below == 0 ? 0 : Math.max(0, plain / shaped);
        if (below == 0 || shaped == 0) {
            add(steps, plain, step(below == 0 ? Step.Action.INTO_RING : Step.Action.PLAIN, below == 0 ? 0 : 1, 1));
            return steps;
        }
        for (int i = 0; i < shaped; i++) {
            add(steps, each, step(Step.Action.PLAIN, 1, 1));
            steps.add(count > below ? step(Step.Action.INCREASE, 1, 2) : step(Step.Action.DECREASE, 2, 1));
        }
        add(steps, plain - each * shaped, step(Step.Action.PLAIN, 1, 1));
        return steps;
    }

    private static void add(List<Step> steps, int times, Step step) {
        for (int i = 0; i < times; i++) {
            steps.add(step);
        }
    }

    public static Step step(Step.Action action, int takes, int makes) {
        return new Step(action, Stitch.DOUBLE_CROCHET, takes, makes, Step.Loop.BOTH, new Span(0, 0), Optional.empty());
    }

    private static Line line(String text, Optional<Steps> steps, OptionalInt stated) {
        return new Line(
                text,
                0,
                Terms.UK,
                Optional.empty(),
                steps,
                stated,
                OptionalInt.empty(),
                Verdict.ADDS_UP,
                List.of(),
                text,
                "");
    }
}
