package roundwright.desktop.safety;

import java.util.ArrayList;
import java.util.List;

/**
 * What a developer needs to know of a failure, and nothing about anybody: kinds of failure and places in the program, without the
 * failures' own messages, which may hold names or counts.
 */
public final class Details {
    private static final int MOST_FRAMES = 40;
    private static final int MOST_CAUSES = 5;

    private Details() {}

    /** The details as a text of lines. */
    public static String of(Throwable failure) {
        List<String> lines = new ArrayList<>();
        String version = Details.class.getPackage().getImplementationVersion();
        lines.add("Roundwright " + (version == null ? "(unreleased)" : version) + ", Java "
                + System.getProperty("java.version") + ", " + System.getProperty("os.name") + " "
                + System.getProperty("os.version"));
        Throwable cause = failure;
        for (int depth = 0; cause != null && depth < MOST_CAUSES; depth++) {
            lines.add(cause.getClass().getName());
            StackTraceElement[] frames = cause.getStackTrace();
            for (int frame = 0; frame < Math.min(frames.length, MOST_FRAMES); frame++) {
                lines.add("  " + frames[frame]);
            }
            cause = cause.getCause();
        }
        return String.join("\n", lines) + "\n";
    }
}
