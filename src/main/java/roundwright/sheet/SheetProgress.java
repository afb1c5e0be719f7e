package roundwright.sheet;

/** Hears how far a folder of sheets is. Called from several threads, but never by two at once. */
@FunctionalInterface
public interface SheetProgress {
    /**
     * A sheet is done.
     *
     * @return whether to go on; false leaves nothing behind
     */
    boolean done(int sheets, int of, Sheet last);

    /** Nobody listens. */
    SheetProgress SILENT = (sheets, of, last) -> true;
}
