package roundwright.notation;

/** What a word or a mark says to someone who reads a written round. The words themselves stand in {@code words.txt}. */
enum Meaning {
    // stitches
    STITCH(Kind.STEP),
    SPECIAL(Kind.STEP),
    CHAIN(Kind.STEP),
    SLIP(Kind.STEP),
    SKIP(Kind.STEP),
    INC(Kind.STEP),
    DEC(Kind.STEP),
    INVDEC(Kind.STEP),
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
    COMMA(Kind.MARK),
    STOP(Kind.MARK),
    SEMICOLON(Kind.MARK),
    COLON(Kind.MARK),
    DASH(Kind.MARK),
    SLASH(Kind.MARK),
    EQUALS,
    OPEN,
    SHUT,
    STAR,
    STARS,
    MARK(Kind.MARK),
    UNKNOWN,
    /** After the last token. */
    FINISH;

    private final Kind kind;

    private enum Kind {
        STEP,
        MARK,
        OTHER
    }

    Meaning() {
        this(Kind.OTHER);
    }

    Meaning(Kind kind) {
        this.kind = kind;
    }

    /** A mark that parts one step from the next. */
    boolean parts() {
        return kind == Kind.MARK;
    }

    /** A mark after which nothing that stood before goes on. */
    boolean ends() {
        return this == STOP || this == SEMICOLON || this == FINISH;
    }

    /** A word that alone says that hands make something. */
    boolean makes() {
        return kind == Kind.STEP;
    }
}
