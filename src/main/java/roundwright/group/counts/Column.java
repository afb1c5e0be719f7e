package roundwright.group.counts;

import java.util.Optional;

/**
 * What a column of a table is.
 *
 * @param part of a column of counts of one round: the part, where its heading names one
 * @param round of a column of counts of one round: the round, else 0
 * @param student of a column of counts of one student: the student as the group calls them
 */
public record Column(Kind kind, Optional<String> part, int round, Optional<String> student) {
    /** What the cells of a column say. */
    public enum Kind {
        STUDENT,
        PART,
        ROUND,
        COUNT,
        DATE,
        NOTE,
        PULLED_BACK,
        /** Answers to checks made at the table. */
        CHECKS,
        /** The course a row belongs to; rows of another are left out. */
        COURSE,
        /** The counts of one round, a student a row. */
        COUNTS_OF_ROUND,
        /** The counts of one student, a round a row. */
        COUNTS_OF_STUDENT,
        PASSED_OVER;

        /** Whether the cells hold counts. */
        public boolean counts() {
            return this == COUNT || this == COUNTS_OF_ROUND || this == COUNTS_OF_STUDENT;
        }
    }

    public static final Column PASSED_OVER = of(Kind.PASSED_OVER);

    public static Column of(Kind kind) {
        return new Column(kind, Optional.empty(), 0, Optional.empty());
    }

    public static Column ofRound(Optional<String> part, int round) {
        return new Column(Kind.COUNTS_OF_ROUND, part, round, Optional.empty());
    }

    public static Column ofStudent(String student) {
        return new Column(Kind.COUNTS_OF_STUDENT, Optional.empty(), 0, Optional.of(student));
    }

    boolean is(Kind other) {
        return kind == other;
    }
}
