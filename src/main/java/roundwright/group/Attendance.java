package roundwright.group;

/** How a student stood in the register of one session. */
public enum Attendance {
    THERE,
    ABSENT,
    LATE,
    /** Was absent, and has worked the session's rounds since. */
    CAUGHT_UP
}
