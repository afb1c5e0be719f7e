package roundwright.group;

/**
 * One who takes a course in a group. No more is kept than the job needs.
 *
 * @param name as they wish to be called
 * @param leftHanded pictures and words are mirrored for them
 * @param largePrint sheets are set large for them
 * @param note the teacher's own words; may be empty
 */
public record Student(StudentId id, String name, boolean leftHanded, boolean largePrint, String note) {
    public Student {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a student needs a name");
        }
    }
}
