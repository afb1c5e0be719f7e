package roundwright.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.course.Course;
import roundwright.group.CourseId;
import roundwright.store.StoreException;
import roundwright.wording.Wording;
import roundwright.workbook.CourseEdit;
import roundwright.workbook.SampleGroup;
import roundwright.workbook.Workbook;

/** {@code sample}: puts a course with an invented group and its counts into a file, for trying out and for measuring. */
@Command(name = "sample", description = "Makes a file with an invented group that has come half way through a course.")
final class SampleCommand extends Verb {
    private static final Wording WORDS = Wording.of("command");
    private static final int MOST_STUDENTS = 100_000;

    private final Terminal terminal;
    private final Clock clock;

    @Parameters(paramLabel = "COURSE.md", description = "The course that they take.")
    private String course;

    @Option(names = "--students", paramLabel = "N", required = true, description = "How many students.")
    private int students;

    @Option(names = "--seed", paramLabel = "S", description = "The same seed makes the same group; 1 without it.")
    private long seed = 1;

    @Option(
            names = "--into",
            paramLabel = "FILE.db",
            required = true,
            description = "The file; it is made where it is not there, else the group is added to it.")
    private String into;

    SampleCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    int run() throws CommandException {
        if (students < 1 || students > MOST_STUDENTS) {
            throw new CommandException.Usage(WORDS.say("sample.students", MOST_STUDENTS, students));
        }
        CourseSource source = CourseSource.read(course, terminal);
        int status = source.reportErrors(terminal);
        Path file = SafeFile.path(into).toAbsolutePath();
        Path backups = file.resolveSibling("backups");
        boolean there = Files.exists(file);
        try (Workbook workbook = there ? Workbook.open(file, backups, clock) : Workbook.create(file, backups, clock)) {
            add(workbook, source);
        } catch (StoreException failure) {
            throw new CommandException.Machine(failure.getMessage());
        }
        terminal.out()
                .println(
                        WORDS.say("sample.made", into, students, source.course().name()));
        return status;
    }

    private void add(Workbook workbook, CourseSource source) throws StoreException {
        Course read = source.course();
        CourseId id = workbook.newCourse();
        workbook.apply(new CourseEdit.AddCourse(id, read.name(), source.source().text()));
        long weeks = (read.lessons().size() + 1) / 2L;
        LocalDate start = LocalDate.now(clock).minusWeeks(Math.max(0, weeks - 1));
        workbook.apply(SampleGroup.of(workbook, id, read, students, seed, start).edit());
    }
}
