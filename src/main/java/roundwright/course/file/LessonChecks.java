package roundwright.course.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.course.RoundRange;
import roundwright.notation.Severity;
import roundwright.notation.Span;
import roundwright.technique.FirstUses;
import roundwright.technique.FirstUses.Place;

/** Checks that the lessons cover the pattern's rounds once each and in working order. */
final class LessonChecks {
    private final List<PlacedLesson> lessons;
    private final FirstUses uses;
    private final Problems problems;

    LessonChecks(List<PlacedLesson> lessons, FirstUses uses, Problems problems) {
        this.lessons = lessons;
        this.uses = uses;
        this.problems = problems;
    }

    /**
     * @param allRead whether every stretch that the lessons name could be read; where not, nobody can say which rounds are in no lesson
     */
    void check(boolean allRead) {
        numbers();
        Map<Place, Integer> covered = covered();
        if (allRead) {
            leftOut(covered);
        }
        order();
    }

    private void numbers() {
        int expected = 1;
        for (PlacedLesson lesson : lessons) {
            int number = lesson.section().number().orElse(expected);
            if (number != expected) {
                problems.mendable(
                        Severity.WARNING,
                        "lesson-number",
                        lesson.section().heading(),
                        Optional.of(
                                "## Lesson " + expected + ": " + lesson.lesson().name()),
                        number,
                        expected);
            }
            expected++;
            if (lesson.section().setting("rounds").isEmpty()) {
                problems.remark(
                        "lesson-without-rounds",
                        lesson.section().heading(),
                        lesson.lesson().number());
            }
        }
    }

    /** The first lesson of every round; rounds in two lessons are reported where they come again. */
    private Map<Place, Integer> covered() {
        Map<Place, Integer> first = new HashMap<>();
        for (PlacedLesson lesson : lessons) {
            List<Place> again = new ArrayList<>();
            for (Place place : rounds(lesson)) {
                Integer before = first.putIfAbsent(place, lesson.lesson().number());
                if (before != null) {
                    again.add(place);
                }
            }
            if (!again.isEmpty()) {
                int before = first.get(again.get(0));
                problems.warning(
                        "overlap",
                        lesson.roundsSpan(),
                        Stretches.say(again),
                        before,
                        lesson.lesson().number());
            }
        }
        return first;
    }

    private List<Place> rounds(PlacedLesson lesson) {
        List<RoundRange> ranges = new ArrayList<>(lesson.lesson().rounds());
        ranges.addAll(lesson.lesson().homework());
        return places(ranges);
    }

    private List<Place> places(List<RoundRange> ranges) {
        List<Place> places = new ArrayList<>();
        for (RoundRange range : ranges) {
            uses.places().stream()
                    .filter(place -> place.round()
                            .filter(round -> range.contains(place.part(), round))
                            .isPresent())
                    .forEach(places::add);
        }
        return places;
    }

    /** Rounds in no lesson are reported at the lesson that should have them. */
    private void leftOut(Map<Place, Integer> covered) {
        if (lessons.isEmpty()) {
            return;
        }
        List<Place> left = uses.places().stream()
                .filter(place -> place.round().isPresent() && !covered.containsKey(place))
                .toList();
        if (!left.isEmpty()) {
            Place first = left.get(0);
            problems.warning("rounds-in-no-lesson", near(first, covered), Stretches.say(left), left.size());
        }
    }

    /** The lesson that has the round before, where there is one: that is the lesson to look at. */
    private Span near(Place place, Map<Place, Integer> covered) {
        int number = covered.entrySet().stream()
                .filter(entry -> entry.getKey().order() < place.order())
                .max(Comparator.comparingInt(entry -> entry.getKey().order()))
                .map(Map.Entry::getValue)
                .orElse(lessons.get(0).lesson().number());
        return lessons.stream()
                .filter(lesson -> lesson.lesson().number() == number)
                .findFirst()
                .orElse(lessons.get(0))
                .roundsSpan();
    }

    private void order() {
        int last = -1;
        for (PlacedLesson lesson : lessons) {
            List<Place> worked = places(lesson.lesson().rounds());
            Optional<Place> back = Optional.empty();
            for (Place place : worked) {
                if (place.order() < last && back.isEmpty()) {
                    back = Optional.of(place);
                }
                last = Math.max(last, place.order());
            }
            back.ifPresent(place -> problems.remark(
                    "out-of-order", lesson.roundsSpan(), lesson.lesson().number(), Stretches.say(List.of(place))));
        }
    }
}
