package roundwright.group;

/** A student's mark in the register of one session of their group. */
public record RegisterMark(GroupId group, SessionId session, StudentId student, Attendance attendance) {}
