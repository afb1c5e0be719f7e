package roundwright.desktop.planning;

import java.util.OptionalInt;
import roundwright.course.planning.PlanSettings;

/**
 * How a course is to be split.
 *
 * @param lessons how many; empty for the number that fits best
 */
record SplitWish(OptionalInt lessons, PlanSettings settings) {}
