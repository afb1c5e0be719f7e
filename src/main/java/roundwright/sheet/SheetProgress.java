package roundwright.sheet;

/** Hears how far a folder of sheets is, on the thread that asked for it. */
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
