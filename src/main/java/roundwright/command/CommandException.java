package roundwright.command;

/** A command cannot go on; the message is for the person, the kind decides the exit status. */
public abstract sealed class CommandException extends Exception {
    private final int status;

    private CommandException(int status, String message) {
        super(message);
        this.status = status;
    }

    public int status() {
        return status;
    }

    /** What was given to read cannot be used at all. */
    public static final class Input extends CommandException {
        public Input(String message) {
            super(ExitStatus.INPUT_HAS_ERRORS, message);
        }
    }

    /** The command was asked for in a way that it cannot follow. */
    public static final class Usage extends CommandException {
        public Usage(String message) {
            super(ExitStatus.WRONG_USAGE, message);
        }
    }

    /** Disk, permissions or the database would not do what was needed. */
    public static final class Machine extends CommandException {
        public Machine(String message) {
            super(ExitStatus.MACHINE_FAILED, message);
        }
    }
}
