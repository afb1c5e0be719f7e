package roundwright.command;

/** What the program's exit status says to a script. */
public final class ExitStatus {
    public static final int FINE = 0;
    /** The input has errors; all of them have been reported. */
    public static final int INPUT_HAS_ERRORS = 1;

    public static final int WRONG_USAGE = 2;
    /** Disk, permissions, database, display. */
    public static final int MACHINE_FAILED = 3;

    private ExitStatus() {}
}
