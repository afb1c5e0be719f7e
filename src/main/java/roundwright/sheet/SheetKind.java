package roundwright.sheet;

/** What can be printed or sent. */
public enum SheetKind {
    /** For the teacher, one a lesson. */
    TEACHER,
    /** For a student, one a lesson. */
    STUDENT,
    /** The course on a page, for the wall or the organiser. */
    OVERVIEW,
    REGISTER,
    /** The group's counts; needs a group. */
    COUNTS,
    /** One student's own page; needs a group. */
    PROGRESS,
    /** One student's last page; needs a group. */
    FINISH,
    /** A page for a phone; one for each student of a group, or one for anybody. */
    PHONE
}
