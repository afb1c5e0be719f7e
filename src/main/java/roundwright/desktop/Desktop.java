package roundwright.desktop;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import roundwright.desktop.start.Folders;
import roundwright.desktop.start.Start;

/** Opens the window. */
public final class Desktop {
    private Desktop() {}

    /** Whether there is a screen to open a window on. */
    public static boolean possible() {
        return !GraphicsEnvironment.isHeadless();
    }

    /** Opens the window and returns at once; the program ends when the window is closed. */
    public static void open(DesktopArguments arguments) {
        Folders folders = arguments
                .home()
                .map(Folders::under)
                .orElseGet(() -> Folders.usual(
                        System.getProperty("os.name"), Path.of(System.getProperty("user.home")), System.getenv()));
        Start.open(arguments.file(), folders, arguments.sample());
    }
}
