package roundwright.course.calendar;

/** A run cannot be held as asked for; the message says why and what to do, in words for the teacher. */
public final class ImpossibleDates extends Exception {
    private static final long serialVersionUID = 1;

    public ImpossibleDates(String message) {
        super(message);
    }
}
