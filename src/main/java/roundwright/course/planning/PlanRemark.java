package roundwright.course.planning;

import java.util.OptionalInt;

/**
 * Something a teacher should know of a plan.
 *
 * @param lesson number of the lesson it is about; empty where it is about the whole plan
 * @param text in plain words, and what to do
 */
public record PlanRemark(OptionalInt lesson, String text) {}
