package roundwright.command;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.wording.Wording;
import roundwright.workbook.Erased;

/** {@code erase}: everything about one student goes, for good. */
@Command(name = "erase", description = "Erases everything about one student from a file, for good.")
final class EraseCommand extends Verb {
    private static final Wording WORDS = Wording.of("command");

    private final Terminal terminal;
    private final Clock clock;

    @Parameters(paramLabel = "FILE.db", description = "The file with groups and counts.")
    private String file;

    @Option(names = "--student", required = true, paramLabel = "NAME", description = "Who is erased.")
    private String student;

    @Option(names = "--backups", paramLabel = "DIR", description = "Erases them from the copies in this folder, too.")
    private String backups;

    EraseCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    int run() throws CommandException {
        Erased erased = DataFile.with(
                file, backups, clock, workbook -> workbook.erase(DataFile.student(workbook, student), backups != null));
        erased.sentences(backups != null).forEach(terminal.out()::println);
        erased.backupsLeft().forEach(left -> terminal.err().println(WORDS.say("data.left", left)));
        return erased.backupsLeft().isEmpty() ? ExitStatus.FINE : ExitStatus.MACHINE_FAILED;
    }
}
