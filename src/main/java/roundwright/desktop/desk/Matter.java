package roundwright.desktop.desk;

import java.util.Set;

/** What can change on the desk. */
public enum Matter {
    /** Another course, or another text of it. */
    COURSE,
    /** Another group, or other people in it. */
    GROUP,
    /** Counts, notes, the register. */
    COUNTS,
    /** The chosen round. */
    PLACE,
    /** The chosen student. */
    STUDENT,
    PAGE,
    /** Whether other students' names are hidden. */
    NAMES,
    /** What can be undone and redone. */
    HISTORY,
    /** There is something to tell the person. */
    NOTICE;

    /** What changes nothing that a page shows. */
    public static final Set<Matter> ASIDE = Set.of(HISTORY, NOTICE);

    /** What is chosen among the same things. */
    public static final Set<Matter> CHOICE = Set.of(PLACE, STUDENT);
}
