package roundwright.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.store.PreparedCopy;
import roundwright.store.StoreException;
import roundwright.wording.Wording;

/** {@code restore}: a file goes back to one of its copies; what it held before is kept in a copy of its own. */
@Command(name = "restore", description = "Takes a file back to a copy, and keeps a copy of what it held before.")
final class RestoreCommand extends Verb {
    private static final Wording WORDS = Wording.of("command");

    private final Terminal terminal;
    private final Clock clock;

    @Parameters(paramLabel = "COPY.db", description = "The copy to go back to.")
    private String copy;

    @Option(
            names = "--into",
            required = true,
            paramLabel = "FILE.db",
            description = "The file that goes back; it is made where it is not there.")
    private String into;

    @Option(names = "--preview", description = "Only says what would change.")
    private boolean preview;

    @Option(
            names = "--backups",
            paramLabel = "DIR",
            description = "The folder for the copy of what the file held; `backups` beside the file without it.")
    private String backups;

    RestoreCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    int run() throws CommandException {
        Path file = SafeFile.path(into).toAbsolutePath();
        Path from = SafeFile.path(copy).toAbsolutePath();
        if (Files.notExists(file)) {
            make(from, file);
            return ExitStatus.FINE;
        }
        return DataFile.with(into, backups, clock, workbook -> {
            workbook.compareWith(from).sentences().forEach(terminal.out()::println);
            if (!preview) {
                Path kept = workbook.restore(from).file();
                terminal.out().println(WORDS.say("data.restored", into, kept));
            }
            return ExitStatus.FINE;
        });
    }

    private void make(Path from, Path file) throws CommandException {
        try (PreparedCopy prepared = PreparedCopy.of(from, file)) {
            if (!preview) {
                prepared.store().copyTo(file);
            }
            terminal.out().println(WORDS.say(preview ? "data.would-be-made" : "data.made", into));
        } catch (StoreException failure) {
            throw new CommandException.Machine(failure.getMessage());
        }
    }
}
