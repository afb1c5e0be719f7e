package roundwright.group.counts;

/** A file out of which no table can be had; the message says why, and what to do, in a sentence or two. */
public final class NotATable extends Exception {
    public NotATable(String message) {
        super(message);
    }
}
