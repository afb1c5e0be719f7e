package roundwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.course.file.ProblemPrinter;

/**
 * {@code check}: reads course files and reports every problem of their patterns, lessons and techniques, each with its place and, where one can be
 * worked out, what to write instead. A file with nothing to report is passed over in silence.
 *
 * <p>{@code --json} gives one array with an object for each file, see {@link CheckJson}. Exit status 1 where a file has errors; warnings and remarks do not
 * count. A file that cannot be opened does not keep the others from being checked.
 */
@Command(name = "check", description = "Reads course files: pattern, lessons, techniques; reports every problem.")
final class CheckCommand extends Verb {
    private final Terminal terminal;

    @Parameters(paramLabel = "COURSE.md", arity = "1..*", description = "The course files; - reads standard input.")
    private List<String> names;

    @Option(names = "--json", description = "Gives what was read, and the problems, as one JSON value.")
    private boolean json;

    private final List<Map<String, Object>> read = new ArrayList<>();

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    int run() {
        int status = ExitStatus.FINE;
        for (String name : names) {
            status = Math.max(status, check(name));
        }
        if (json) {
            terminal.out().println(Json.line(read));
        }
        return status;
    }

    private int check(String name) {
        try {
            CourseSource course = CourseSource.read(name, terminal);
            if (json) {
                read.add(CheckJson.of(course.source().name(), course.file()));
            } else {
                print(course);
            }
            return course.file().hasErrors() ? ExitStatus.INPUT_HAS_ERRORS : ExitStatus.FINE;
        } catch (CommandException failure) {
            terminal.err().println(failure.getMessage());
            return failure.status();
        }
    }

    private void print(CourseSource course) {
        ProblemPrinter printer =
                new ProblemPrinter(course.source().name(), course.source().text());
        course.file().problems().forEach(problem -> terminal.err().print(printer.print(problem.problem())));
    }
}
