package roundwright.desktop.plan;

import roundwright.wording.Wording;

/** The columns of the lessons' table. */
enum LessonColumn {
    LESSON(230, 150),
    DATE(96, 84),
    ROUNDS(130, 96),
    NEW(300, 130),
    MINUTES(130, 92);

    private static final Wording WORDS = Wording.of("desktop");

    private final int width;
    private final int least;

    LessonColumn(int width, int least) {
        this.width = width;
        this.least = least;
    }

    int width() {
        return width;
    }

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
