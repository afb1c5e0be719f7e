package roundwright.course.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Small lists of items written out by hand: a line an item. */
final class WorkedCases {
    private WorkedCases() {}

    /**
     * Items from short words: minutes, then any of {@code new}, {@code new2}, {@code shaping}, {@code ends}, {@code prepares},
     * {@code home}, {@code range} (goes on with the range of the item before).
     */
    static List<PlanItem> items(String... lines) {
        List<PlanItem> items = new ArrayList<>();
        for (String line : lines) {
            List<String> words = Arrays.asList(line.split(" "));
            int at = items.size();
            int range = words.contains("range") ? items.get(at - 1).range() : at;
            items.add(new PlanItem(
                    "Tower",
                    OptionalInt.of(at + 1),
                    Optional.empty(),
                    0,
                    Double.parseDouble(words.get(0)),
                    0,
                    0,
                    introduced(words, at),
                    words.contains("shaping"),
                    range,
                    words.contains("ends"),
                    words.contains("prepares"),
                    words.contains("home")));
        }
        return items;
    }

    private static List<String> introduced(List<String> words, int at) {
        return words.contains("new2")
                ? List.of("one-" + at, "two-" + at)
                : words.contains("new") ? List.of("one-" + at) : List.of();
    }

    /** Where the lessons of a plan end: {@code "2 4+6"} is a lesson to item 2, then one to 4 with homework to 6. */
    static String ends(Plan plan) {
        return String.join(
                " ",
                plan.lessons().stream()
                        .map(PlannedLesson::stretch)
                        .map(stretch -> stretch.to() + (stretch.hasHomework() ? "+" + stretch.last() : ""))
                        .toList());
    }
}
