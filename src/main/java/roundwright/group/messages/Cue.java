package roundwright.group.messages;

/** What a phrase says of the numbers near it; the phrases stand in {@code cues.txt}. */
enum Cue {
    ROUND,
    ROUNDS,
    STITCHES,
    TO,
    TARGET,
    UNFINISHED,
    PULLED_BACK,
    CORRECTION,
    OR,
    DOUBT,
    SAME,
    ALL_RIGHT,
    RIGHT,
    ALL,
    UNTIL,
    QUESTION,
    HYPOTHETICAL,
    TEACHER,
    MINE,
    OTHER,
    VOCATIVE,
    LESS,
    MORE,
    LOST,
    GAINED,
    OFF,
    FILLER,
    /** What a pattern is written on: "the sheet". */
    SOURCE,
    /** After that: the number that follows is due. */
    SAYS,
    /** People near a student, whose counts are not the student's. */
    RELATIVE,
    /** After a number: it counts something other than stitches. */
    UNIT,
    /** Before a number: it is no count. */
    NO_COUNT_BEFORE,
    /** Words that end like a number of things and are none. */
    NO_THINGS,
    /** Ties a count to the round after it. */
    BINDING,
    /** May stand between a count and the round it is tied to. */
    BETWEEN
}
