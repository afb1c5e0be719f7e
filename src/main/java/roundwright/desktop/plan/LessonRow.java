package roundwright.desktop.plan;

import java.util.List;

/**
 * A lesson as the table shows it.
 *
 * @param number from 1
 * @param name its title
 * @param remark what has to be thought of; empty for nothing
 * @param date when it is held; empty where no date is known
 * @param held whether it has been held or has a date of its own; else the date is reckoned from the group's start
 * @param rounds which rounds are worked in it
 * @param introduces names of the techniques that are new
 * @param minutes what it comes to; 0 where that is not known
 * @param session length of its session in minutes
 */
public record LessonRow(
        int number,
        String name,
        String remark,
        String date,
        boolean held,
        String rounds,
        List<String> introduces,
        int minutes,
        int session) {
    public LessonRow {
        introduces = List.copyOf(introduces);
    }

    /** Minutes over the session's length; 0 where it fits. */
    public int over() {
        return Math.max(0, minutes - session);
    }
}
