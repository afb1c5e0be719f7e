package roundwright.group;

/** The teacher's own words on one student's work in one round. */
public record Note(GroupId group, StudentId student, String part, int round, String text) {
    public Note {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a note without words is no note");
        }
    }
}
