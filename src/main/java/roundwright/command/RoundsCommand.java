package roundwright.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.notation.Problem;
import roundwright.notation.Severity;
import roundwright.notation.Terms;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;
import roundwright.pattern.check.PatternChecks;
import roundwright.technique.Techniques;
import roundwright.wording.Wording;

/**
 * {@code rounds}: reads bare pattern lines, checks each against the one before, and says what each uses and makes. With {@code --json} one object a line;
 * otherwise the line with its sum, and its problems where messages go. Each file is one writer.
 */
@Command(name = "rounds", description = "Reads bare pattern lines and checks each against the one before.")
final class RoundsCommand extends Verb {
    private static final Wording WORDS = Wording.of("command");

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Files of pattern lines; - reads standard input.")
    private List<String> names;

    @Option(names = "--terms", description = "UK or US; found out from the file where it is not given.")
    private Terms terms;

    @Option(names = "--json", description = "Gives one JSON object a line.")
    private boolean json;

    private final Techniques techniques = Techniques.catalogue();

    RoundsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    int run() {
        int status = ExitStatus.FINE;
        for (String name : names) {
            status = Math.max(status, read(name));
        }
        return status;
    }

    private int read(String name) {
        try {
            TextSource source = TextSource.read(name, terminal);
            String text = source.text().startsWith("\uFEFF") ? source.text().substring(1) : source.text();
            Pattern pattern = PatternReader.readBare(Optional.ofNullable(terms), text);
            PatternChecks checks = PatternChecks.of(pattern);
            LineNumbers numbers = new LineNumbers(text);
            boolean errors = false;
            for (Part part : pattern.parts()) {
                for (Line line : part.lines()) {
                    print(source.name(), numbers.of(line.at()), line, checks);
                    errors |= line.problems().stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
                }
            }
            return errors ? ExitStatus.INPUT_HAS_ERRORS : ExitStatus.FINE;
        } catch (CommandException failure) {
            terminal.err().println(failure.getMessage());
            return failure.status();
        }
    }

    private void print(String file, int number, Line line, PatternChecks checks) {
        if (json) {
            Map<String, Object> object = new LinkedHashMap<>();
            object.put("file", file);
            object.put("line", number);
            object.putAll(LineJson.of(line, techniques, checks));
            terminal.out().println(Json.line(object));
            return;
        }
        terminal.out().println(line.text());
        if (!line.sum().isEmpty()) {
            terminal.out().println(WORDS.say("rounds-sum", line.sum()));
        }
        for (Problem problem : checks.problems(line)) {
            int column = problem.span().start() + 1;
            terminal.err().println(WORDS.say("rounds-problem", file, number, column, problem.message()));
            problem.suggestion().ifPresent(mend -> terminal.err().println(WORDS.say("rounds-mend", mend)));
        }
    }
}
