package roundwright.desktop.plan;

import roundwright.wording.Wording;

/** The columns of the lessons' table. */
enum LessonColumn {
    LESSON(0.32, 120),
    DATE(0, 0),
    ROUNDS(0.3, 80),
    NEW(0.68, 118),
    MINUTES(0.12, 0);

    private static final Wording WORDS = Wording.of("desktop");

    private final double share;
    private final int least;

    LessonColumn(double share, int least) {
        this.share = share;
        this.least = least;
    }

    /** Its share of the width that is left when every column shows all it has. */
    double share() {
        return share;
    }

    /** Width in points without which it says nothing. */
    int least() {
        return least;
    }

    String heading() {
        return switch (this) {
            case LESSON -> WORDS.say("column-lesson");
            case DATE -> WORDS.say("column-date");
            case ROUNDS -> WORDS.say("column-rounds");
            case NEW -> WORDS.say("column-new");
            case MINUTES -> WORDS.say("column-minutes");
        };
    }

    boolean right() {
        return this == DATE || this == ROUNDS || this == MINUTES;
    }

    /** What a row has in this column, in words. */
    String told(LessonRow row) {
        return switch (this) {
            case LESSON ->
                row.remark().isEmpty()
                        ? WORDS.say("lesson-named", row.number(), row.name())
                        : WORDS.say("lesson-remarked", row.number(), row.name(), row.remark());
            case DATE -> row.date();
            case ROUNDS -> row.rounds();
            case NEW -> row.introduces().isEmpty() ? WORDS.say("nothing-new") : Wording.list(row.introduces());
            case MINUTES -> WORDS.say("minutes-of", row.minutes(), row.session());
        };
    }
}
