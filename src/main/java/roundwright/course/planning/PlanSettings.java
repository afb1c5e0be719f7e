package roundwright.course.planning;

/**
 * What a split is measured by.
 *
 * @param minutes length of a session
 * @param pace stitches a minute
 * @param mostNew new techniques that a session after the first should have at most; the first may have
 *     {@value #MOST_NEW_IN_THE_FIRST}
 * @param homeworkMinutes the longest homework; 0 for none
 */
public record PlanSettings(double minutes, double pace, int mostNew, double homeworkMinutes) {
    /** In the first session there is nothing to recap, and hands and yarn are new anyway. */
    public static final int MOST_NEW_IN_THE_FIRST = 3;

    /** Minutes to settle at the beginning. */
    public static final double SETTLE = 5;

    /** Minutes to recap the session before. */
    public static final double RECAP = 10;

    /** Minutes to count and check at the end. */
    public static final double CHECK = 5;

    /** Minutes to pack up. */
    public static final double PACK_UP = 5;

    /** One new hand movement or two small ones a session is what teachers find can be learned. */
    public static final int USUAL_MOST_NEW = 2;

    public PlanSettings {
        if (!(minutes > 0 && pace > 0 && mostNew >= 0 && homeworkMinutes >= 0)
                || Double.isInfinite(minutes + pace + homeworkMinutes)) {
            throw new IllegalArgumentException("no plan with sessions of " + minutes + " minutes, " + pace
                    + " stitches a minute, at most " + mostNew + " new techniques, homework of " + homeworkMinutes);
        }
    }

    /** Minutes of a session that no item can have: settling, recap, count and check, packing up. */
    public static double fixedMinutes(boolean firstOfCourse) {
        return SETTLE + (firstOfCourse ? 0 : RECAP) + CHECK + PACK_UP;
    }

    /** How many new techniques cost nothing. */
    public int mostNew(boolean firstOfCourse) {
        return firstOfCourse ? MOST_NEW_IN_THE_FIRST : mostNew;
    }
}
