package roundwright.group;

import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * One meeting of a group, with what the teacher wrote of it.
 *
 * @param lesson number of the lesson that was given, where it was one of the course's
 * @param reached how far the group came; may be empty
 * @param remember what to think of next time; may be empty
 */
public record Session(
        SessionId id, GroupId group, LocalDate date, OptionalInt lesson, String reached, String remember) {
    public Session logged(String nowReached, String nowRemember) {
        return new Session(id, group, date, lesson, nowReached, nowRemember);
    }
}
