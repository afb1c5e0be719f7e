package roundwright.command;

import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code initials}: a copy to share, in which students go by their initials and nothing is written about anybody. */
@Command(
        name = "initials",
        description = "Writes a copy in which students have only initials, and notes, logs and places are left out.")
final class InitialsCommand extends Verb {
    private final Terminal terminal;
    private final Clock clock;

    @Parameters(paramLabel = "FILE.db", description = "The file with groups and counts.")
    private String file;

    @Option(
            names = "--into",
            required = true,
            paramLabel = "COPY.db",
            description = "The copy; it may not be there yet.")
    private String into;

    InitialsCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    int run() throws CommandException {
        Path copy = DataFile.newFile(into);
        DataFile.with(file, null, clock, workbook -> {
            workbook.copyWithInitials(copy);
            return copy;
        });
        terminal.out().println(into);
        return ExitStatus.FINE;
    }
}
