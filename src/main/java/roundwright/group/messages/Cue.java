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
    FILLER
}
