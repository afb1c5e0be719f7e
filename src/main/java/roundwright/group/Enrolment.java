package roundwright.group;

/**
 * A student's place in a group.
 *
 * @param place orders the students of the group, from 1 as they were enrolled
 */
public record Enrolment(GroupId group, StudentId student, int place) {}
