package roundwright.command;

import java.util.List;
import roundwright.course.Course;
import roundwright.course.file.CourseFile;
import roundwright.course.file.FileProblem;
import roundwright.course.file.ProblemPrinter;
import roundwright.wording.Wording;

/**
 * A course file that a command was asked to read.
 *
 * @param source the text and its name
 * @param file what was read out of it
 */
record CourseSource(TextSource source, CourseFile file) {
    private static final Wording WORDS = Wording.of("command");

    static CourseSource read(String name, Terminal terminal) throws CommandException {
        TextSource source = TextSource.read(name, terminal);
        return new CourseSource(source, CourseFile.read(source.text()));
    }

    Course course() {
        return file.course();
    }

    /** Writes every error of the file where messages go, and gives the exit status that they ask for. */
    int reportErrors(Terminal terminal) {
        List<FileProblem> errors =
                file.problems().stream().filter(FileProblem::isError).toList();
        ProblemPrinter printer = new ProblemPrinter(source.name(), source.text());
        errors.forEach(problem -> terminal.err().print(printer.print(problem.problem())));
        return errors.isEmpty() ? ExitStatus.FINE : ExitStatus.INPUT_HAS_ERRORS;
    }

    /** Puts another text in the file's place; a file that is not in UTF-8, or has changed since it was read, is left alone. */
    void replace(String text) throws CommandException {
        if (!SafeFile.holds(SafeFile.path(source.name()), source.text())) {
            throw new CommandException.Input(WORDS.say("not-as-read", source.name()));
        }
        SafeFile.write(SafeFile.path(source.name()), text);
    }
}
