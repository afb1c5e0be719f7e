package roundwright.course.planning;

/** There is no plan of the kind asked for; the message says why and what to do, in words for the teacher. */
public final class CannotPlan extends Exception {
    private static final long serialVersionUID = 1;

    public CannotPlan(String message) {
        super(message);
    }
}
