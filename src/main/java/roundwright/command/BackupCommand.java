package roundwright.command;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code backup}: a dated, checked copy of a file, as the desktop makes one each day. */
@Command(name = "backup", description = "Makes a dated copy of a file, checks it, and thins the copies there are.")
final class BackupCommand extends Verb {
    private final Terminal terminal;
    private final Clock clock;

    @Parameters(paramLabel = "FILE.db", description = "The file with groups and counts.")
    private String file;

    @Option(names = "--to", required = true, paramLabel = "DIR", description = "The folder for the copies.")
    private String to;

    BackupCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    int run() throws CommandException {
        terminal.out()
                .println(DataFile.<Object>with(
                        file, to, clock, workbook -> workbook.backUp().file()));
        return ExitStatus.FINE;
    }
}
