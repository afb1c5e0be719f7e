package roundwright.course.preparation;

/** One thing to get ready, to mind or to do, in words for the teacher. */
public record PrepLine(Kind kind, String text) {
    /** What kind of thing it is. */
    public enum Kind {
        /** To have on the table. */
        MATERIAL,
        /** To have made beforehand, to show or to lend. */
        SAMPLE,
        /** The order in which things have to be done. */
        ORDER,
        /** To mind, so that no one is hurt. */
        CAUTION
    }
}
