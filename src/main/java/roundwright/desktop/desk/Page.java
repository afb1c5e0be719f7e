package roundwright.desktop.desk;

/** The pages of the window, one for each thing a teacher sits down to do. */
public enum Page {
    PLAN,
    COUNTS,
    STUCK,
    NEXT
}
