package roundwright.sheet;

/** A folder could not be filled; the message says why to a person, and nothing half-written is in it. */
public final class CannotWrite extends Exception {
    CannotWrite(String message, Throwable cause) {
        super(message, cause);
    }
}
