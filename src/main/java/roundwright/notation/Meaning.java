package roundwright.notation;

/** What a word or a mark says to someone who reads a written round. The words themselves stand in {@code words.txt}. */
enum Meaning {
    // stitches
    STITCH,
    SPECIAL,
    CHAIN,
    SLIP,
    SKIP,
    INC,
    DEC,
    INVDEC,
    TOG,
    /** A loop drawn up in a stitch, with which decreases are told. */
    DRAWN,
    // things a stitch is worked into
    ST,
    SPACE,
    CHAINSPACE,
    RING,
    MAGIC,
    HOOK,
    PETAL,
    MARKER,
    TCHAIN,
    OTHERSIDE,
    LAYERS,
    LOST,
    // where
    IN,
    TO,
    AT,
    OF,
    BETWEEN,
    THE,
    EACH,
    NEXT,
    SAME,
    LAST,
    FIRST,
    PREVIOUS,
    REMAINING,
    AROUND,
    ACROSS,
    TOEND,
    TOP,
    BASE,
    HOLD,
    ONLY,
    // how often
    TIMES,
    COUNTER,
    NUMBER,
    ORDINAL,
    REPEAT,
    FROM,
    MORE,
    TOTAL,
    ENDING,
    OMIT,
    // between steps
    AND,
    // rounds
    ROUND,
    STEP,
    FOUNDATION,
    NEXTROUND,
    AS,
    ODD,
    START,
    YOUHAVE,
    NOW,
    // around the stitches
    JOIN,
    CLOSE,
    FORM,
    TURN,
    COUNTSAS,
    NOT,
    CONTINUE,
    WORK,
    WITH,
    NOTE,
    COLOUR,
    MEASURE,
    FILLER,
    /** A stitch without shaping, or a round of them: "plain". */
    PLAIN,
    UNWORKED,
    IT,
    EVEN,
    EVENLY,
    PER,
    FOR,
    OTHER,
    CORNERST,
    // marks
    COMMA,
    STOP,
    SEMICOLON,
    COLON,
    DASH,
    SLASH,
    EQUALS,
    OPEN,
    SHUT,
    STAR,
    STARS,
    MARK,
    UNKNOWN,
    /** After the last token. */
    FINISH;

    /** A mark that parts one step from the next. */
    boolean parts() {
        return switch (this) {
            case COMMA, STOP, SEMICOLON, COLON, DASH, SLASH, MARK -> true;
            default -> false;
        };
    }

    /** A mark after which nothing that stood before goes on. */
    boolean ends() {
        return this == STOP || this == SEMICOLON || this == FINISH;
    }

    /** A word that alone says that hands make something. */
    boolean makes() {
        return switch (this) {
            case STITCH, SPECIAL, CHAIN, SLIP, SKIP, INC, DEC, INVDEC -> true;
            default -> false;
        };
    }
}
