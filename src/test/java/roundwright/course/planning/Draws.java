package roundwright.course.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;

/** Random things to plan, for tests that hold for all of them. */
final class Draws {
    private Draws() {}

    /** So many items in parts, ranges and instructions, with first uses here and there. */
    static List<PlanItem> items(Random random, int size) {
        double homework = random.nextDouble();
        List<PlanItem> items = new ArrayList<>();
        int range = 0;
        for (int i = 0; i < size; i++) {
            range += random.nextInt(3) == 0 ? 0 : 1;
            items.add(item(random, i, range, homework));
        }
        return items;
    }

    private static PlanItem item(Random random, int at, int range, double homework) {
        int introduced = random.nextInt(3) > 0 ? 0 : 1 + random.nextInt(3);
        boolean round = random.nextInt(6) > 0;
        return new PlanItem(
                "Part",
                round ? OptionalInt.of(at + 1) : OptionalInt.empty(),
                round ? Optional.empty() : Optional.of("Stuff."),
                0,
                random.nextInt(4) == 0 ? 5 : random.nextDouble() * 12,
                round ? 0.75 : 0,
                introduced * 5.0 * random.nextInt(3),
                IntStream.range(0, introduced)
                        .mapToObj(k -> "technique-" + at + "-" + k)
                        .toList(),
                random.nextBoolean(),
                range,
                random.nextInt(6) == 0,
                random.nextInt(6) == 0,
                introduced == 0 && random.nextDouble() < homework);
    }

    static PlanSettings settings(Random random) {
        return new PlanSettings(
                random.nextInt(5) == 0 ? 10 + random.nextInt(20) : 25 + random.nextInt(80),
                3 + random.nextInt(12),
                random.nextInt(4),
                random.nextInt(3) == 0 ? 0 : random.nextInt(40));
    }

    static OptionalInt sessions(Random random, int items) {
        return random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(1 + random.nextInt(items));
    }
}
