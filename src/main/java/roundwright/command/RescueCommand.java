package roundwright.command;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.store.Rescue;
import roundwright.store.Rescued;
import roundwright.store.StoreException;

/** {@code rescue}: what can still be read of a damaged file goes into a new one. */
@Command(
        name = "rescue",
        description = "Saves what can be read of a damaged file into a new one, and says what could not be saved.")
final class RescueCommand extends Verb {
    private final Terminal terminal;

    @Parameters(paramLabel = "DAMAGED.db", description = "The damaged file; it is only read.")
    private String damaged;

    @Option(
            names = "--into",
            required = true,
            paramLabel = "NEW.db",
            description = "The new file; it may not be there yet.")
    private String into;

    RescueCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    int run() throws CommandException {
        Path target = DataFile.newFile(into);
        try {
            Rescued rescued = Rescue.of(SafeFile.path(damaged).toAbsolutePath(), target);
            rescued.sentences().forEach(terminal.out()::println);
            return rescued.everything() ? ExitStatus.FINE : ExitStatus.INPUT_HAS_ERRORS;
        } catch (StoreException failure) {
            throw new CommandException.Machine(failure.getMessage());
        }
    }
}
