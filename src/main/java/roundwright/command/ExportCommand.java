package roundwright.command;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.workbook.HeldAbout;

/** {@code export}: all that a file holds about one student, to be read by them, and as JSON. */
@Command(name = "export", description = "Writes all that a file holds about one student: a text and the same as JSON.")
final class ExportCommand extends Verb {
    private final Terminal terminal;
    private final Clock clock;

    @Parameters(paramLabel = "FILE.db", description = "The file with groups and counts.")
    private String file;

    @Option(names = "--student", required = true, paramLabel = "NAME", description = "Who asks for it.")
    private String student;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write into.")
    private String out;

    ExportCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    int run() throws CommandException {
        HeldAbout held = DataFile.with(
                file,
                null,
                clock,
                workbook -> HeldAbout.of(workbook.view(), DataFile.student(workbook, student), LocalDate.now(clock)));
        Path folder = SafeFile.path(out);
        for (List<String> each : List.of(List.of(".txt", held.text()), List.of(".json", held.json()))) {
            Path target = folder.resolve(held.fileName() + each.get(0));
            SafeFile.write(target, each.get(1));
            terminal.out().println(target);
        }
        return ExitStatus.FINE;
    }
}
