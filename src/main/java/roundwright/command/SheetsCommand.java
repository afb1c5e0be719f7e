package roundwright.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.course.Course;
import roundwright.course.Lesson;
import roundwright.sheet.CannotWrite;
import roundwright.sheet.Sheet;
import roundwright.sheet.SheetFolder;
import roundwright.sheet.SheetKind;
import roundwright.sheet.SheetOrder;
import roundwright.sheet.SheetProgress;
import roundwright.sheet.Sheets;
import roundwright.sheet.content.GroupReports;
import roundwright.sheet.style.Paper;
import roundwright.sheet.style.SheetStyle;
import roundwright.sheet.style.TypeSetting;
import roundwright.wording.Wording;

/**
 * {@code sheets}: makes what is printed and sent, and writes all of it into a folder or nothing.
 *
 * <p>A file with errors still gives its sheets, which say what could not be read; the exit status is then 1.
 */
@Command(
        name = "sheets",
        description = "Makes sheets to print (PDF) and pages for phones (HTML), for the teacher and for students.")
final class SheetsCommand extends Verb {
    private static final Wording WORDS = Wording.of("command");

    private final Terminal terminal;
    private final Clock clock;

    @Parameters(paramLabel = "COURSE.md", description = "The course file; - reads standard input.")
    private String name;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write into.")
    private String out;

    @Option(names = "--lesson", paramLabel = "N", description = "The sheets of one lesson only.")
    private Integer lesson;

    @Option(
            names = "--only",
            split = ",",
            paramLabel = "KINDS",
            description = "Only these: ${COMPLETION-CANDIDATES}; several with commas.")
    private List<SheetKind> only = List.of(SheetKind.values());

    @Option(names = "--large", description = "Students’ sheets in large print: 18 points, one column.")
    private boolean large;

    @Option(names = "--easy-reading", description = "Students’ sheets for dyslexic readers.")
    private boolean easyReading;

    @Option(names = "--left-handed", description = "Students’ sheets with charts mirrored and words to the other hand.")
    private boolean leftHanded;

    @Option(names = "--every-style", description = "Students’ sheets in each type, for either hand.")
    private boolean everyStyle;

    @Option(names = "--paper", paramLabel = "a4|letter", description = "The paper in the printer; a4 without it.")
    private Paper paper = Paper.A4;

    @Option(names = "--students", paramLabel = "NAMES.txt", description = "Names of the group, one a line.")
    private String students;

    @Option(names = "--counts", paramLabel = "COUNTS.csv", description = "Counts so far: student,part,round,count.")
    private String counts;

    SheetsCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    int run() throws CommandException {
        CourseSource source = CourseSource.read(name, terminal);
        int status = source.reportErrors(terminal);
        Course course = source.course();
        if (course.pattern().parts().stream().allMatch(part -> part.rounds().isEmpty())) {
            throw new CommandException.Input(
                    WORDS.say("sheets.nothing", source.source().name()));
        }
        checkLesson(course);
        GroupFiles files = new GroupFiles(terminal, clock);
        Optional<GroupReports> group = files.read(course, Optional.ofNullable(students), Optional.ofNullable(counts));
        List<Path> written = write(Sheets.of(order(course, group)));
        written.forEach(path -> terminal.out().println(path));
        return files.problems() ? ExitStatus.INPUT_HAS_ERRORS : status;
    }

    private void checkLesson(Course course) throws CommandException {
        if (lesson != null
                && !course.lessons().isEmpty()
                && course.lesson(lesson).isEmpty()) {
            String numbers = course.lessons().stream()
                    .map(Lesson::number)
                    .map(String::valueOf)
                    .collect(Collectors.joining(", "));
            throw new CommandException.Usage(WORDS.say("sheets.no-lesson", lesson, numbers));
        }
    }

    private SheetOrder order(Course course, Optional<GroupReports> group) {
        SheetOrder all = SheetOrder.of(course)
                .only(new LinkedHashSet<>(only))
                .styled(styles())
                .on(paper);
        SheetOrder some = lesson == null ? all : all.lesson(lesson);
        return group.map(some::forGroup).orElse(some);
    }

    private List<SheetStyle> styles() {
        if (everyStyle) {
            return SheetOrder.everyStyle();
        }
        List<SheetStyle> styles = new ArrayList<>();
        if (large) {
            styles.add(SheetStyle.PLAIN.typed(TypeSetting.LARGE).handed(leftHanded));
        }
        if (easyReading) {
            styles.add(SheetStyle.PLAIN.typed(TypeSetting.READING).handed(leftHanded));
        }
        return styles.isEmpty() ? List.of(SheetStyle.PLAIN.handed(leftHanded)) : styles;
    }

    private List<Path> write(List<Sheet> sheets) throws CommandException {
        try {
            return new SheetFolder(SafeFile.path(out)).write(sheets, progress());
        } catch (CannotWrite failure) {
            throw new CommandException.Machine(failure.getMessage());
        }
    }

    /** A person at a terminal sees how far it is; a script sees nothing. */
    private SheetProgress progress() {
        if (System.console() == null) {
            return SheetProgress.SILENT;
        }
        return (done, of, last) -> {
            terminal.err().print("\r" + WORDS.say("sheets.progress", done, of) + (done == of ? "\n" : ""));
            terminal.err().flush();
            return true;
        };
    }
}
