package roundwright.pattern.chart;

import java.util.Set;
import roundwright.pattern.WorkedAs;

/**
 * How a round's chart is laid out.
 *
 * @param worked along what line its signs stand: a ring, an oval, a row
 * @param back whether it is a row that goes back the way the row below it came
 * @param leftHanded mirrored
 * @param wrong steps that are marked as worked wrongly
 */
public record ChartSetting(WorkedAs worked, boolean back, boolean leftHanded, Set<Integer> wrong) {
    public ChartSetting {
        wrong = Set.copyOf(wrong);
    }

    /** A ring as the pattern has it. */
    public static ChartSetting ring(boolean leftHanded) {
        return new ChartSetting(WorkedAs.ROUNDS, false, leftHanded, Set.of());
    }

    /** A round of a part that is worked so; every second row goes back. */
    public static ChartSetting of(WorkedAs worked, int round, boolean leftHanded) {
        return new ChartSetting(worked, worked == WorkedAs.ROWS && round % 2 == 0, leftHanded, Set.of());
    }

    /** The same with these steps marked. */
    public ChartSetting marking(Set<Integer> steps) {
        return new ChartSetting(worked, back, leftHanded, steps);
    }
}
