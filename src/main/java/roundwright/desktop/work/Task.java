package roundwright.desktop.work;

/**
 * A piece of work in two halves.
 *
 * @param <R> what the first half finds out for the second
 */
public interface Task<R> {
    /** Runs away from the event thread; touches nothing on the screen. */
    R away() throws Exception;

    /** Runs on the event thread when the work is done. */
    void here(R result);

    /** Runs on the event thread instead of {@link #here} when the work failed. */
    void failed(Exception failure);
}
