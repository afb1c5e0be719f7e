package roundwright.desktop;

import java.awt.GraphicsEnvironment;

/** Opens the window. */
public final class Desktop {
    private Desktop() {}

    /** Whether there is a screen to open a window on. */
    public static boolean possible() {
        return !GraphicsEnvironment.isHeadless();
    }

    /** Opens the window and returns at once; the program ends when the window is closed. */
    public static void open(DesktopArguments arguments) {}
}
