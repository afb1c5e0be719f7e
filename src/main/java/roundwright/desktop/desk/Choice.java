package roundwright.desktop.desk;

import java.util.Optional;
import roundwright.group.CourseId;
import roundwright.group.GroupId;
import roundwright.group.RoundPlace;
import roundwright.group.StudentId;

/**
 * What is chosen on the desk. Nothing here is checked against the file: whoever looks something up with it may find nothing.
 *
 * @param course the course in hand
 * @param group the group in hand
 * @param place the chosen round
 * @param student the chosen student
 * @param page the page that is shown
 * @param namesHidden whether every other student's name is hidden
 */
public record Choice(
        Optional<CourseId> course,
        Optional<GroupId> group,
        Optional<RoundPlace> place,
        Optional<StudentId> student,
        Page page,
        boolean namesHidden) {
    public static final Choice NONE =
            new Choice(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Page.PLAN, false);

    public Choice withCourse(Optional<CourseId> other) {
        return new Choice(other, group, place, student, page, namesHidden);
    }

    public Choice withGroup(Optional<GroupId> other) {
        return new Choice(course, other, place, student, page, namesHidden);
    }

    public Choice withPlace(Optional<RoundPlace> other) {
        return new Choice(course, group, other, student, page, namesHidden);
    }

    public Choice withStudent(Optional<StudentId> other) {
        return new Choice(course, group, place, other, page, namesHidden);
    }

    public Choice withPage(Page other) {
        return new Choice(course, group, place, student, other, namesHidden);
    }

    public Choice withNamesHidden(boolean hidden) {
        return new Choice(course, group, place, student, page, hidden);
    }
}
