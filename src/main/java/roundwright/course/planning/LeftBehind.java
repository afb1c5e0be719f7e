package roundwright.course.planning;

/**
 * A student whom a plan leaves behind.
 *
 * @param name of the student
 * @param items things the plan takes as done that the student has not done
 * @param catchUpMinutes what those take, at the student's own pace; their teaching is not counted
 * @param extraMinutes minutes a lesson that the student needs beyond the group, at their own pace, to stay with the plan
 */
public record LeftBehind(String name, int items, double catchUpMinutes, double extraMinutes) {}
