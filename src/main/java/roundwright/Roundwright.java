package roundwright;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.command.Commands;
import roundwright.command.ExitStatus;
import roundwright.command.Terminal;
import roundwright.desktop.Desktop;
import roundwright.desktop.DesktopArguments;
import roundwright.wording.Wording;

/** Starts Roundwright: a verb runs a command; no argument, or a file's name, opens the desktop. */
public final class Roundwright {
    private static final String NEW_HOME = "--new-home";
    private static final String SAMPLE = "--sample";
    private static final List<String> FILE_ENDINGS = List.of(".db", ".roundwright");

    private Roundwright() {}

    public static void main(String[] arguments) {
        Optional<DesktopArguments> desktop = forDesktop(arguments);
        if (desktop.isEmpty()) {
            System.exit(Commands.run(Terminal.of(System.in, System.out, System.err), arguments));
        } else if (Desktop.possible()) {
            Desktop.open(desktop.get());
        } else {
            System.err.println(Wording.of("command").say("no-display"));
            System.exit(ExitStatus.MACHINE_FAILED);
        }
    }

    /** The desktop's arguments, or nothing where the arguments are a command's. */
    static Optional<DesktopArguments> forDesktop(String... arguments) {
        List<String> rest = new ArrayList<>(List.of(arguments));
        boolean sample = rest.remove(SAMPLE);
        try {
            Optional<Path> home = Optional.empty();
            int place = rest.indexOf(NEW_HOME);
            if (place >= 0 && place + 1 < rest.size()) {
                home = Optional.of(Path.of(rest.remove(place + 1)));
                rest.remove(place);
            }
            boolean file = rest.size() == 1
                    && FILE_ENDINGS.stream().anyMatch(rest.get(0)::endsWith)
                    && !rest.get(0).startsWith("-");
            return rest.isEmpty() || file
                    ? Optional.of(new DesktopArguments(rest.stream().findFirst().map(Path::of), home, sample))
                    : Optional.empty();
        } catch (InvalidPathException notAPath) {
            return Optional.empty();
        }
    }
}
