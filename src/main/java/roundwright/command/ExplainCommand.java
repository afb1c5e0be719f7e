package roundwright.command;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.notation.Terms;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.PartText;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;
import roundwright.pattern.Round;
import roundwright.pattern.SourceLine;
import roundwright.wording.Wording;

/** {@code explain}: rounds in plain words for a beginner: what to do, how often, the count before and after, and why. */
@Command(name = "explain", description = "Says rounds in plain words: what to do, how often, and the counts.")
final class ExplainCommand extends Verb {
    private static final Wording WORDS = Wording.of("command");

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "COURSE.md", description = "The course file; - reads standard input.")
    private String name;

    @Parameters(index = "1", arity = "0..1", paramLabel = "PART", description = "Only this part.")
    private String partName;

    @Parameters(index = "2", arity = "0..1", paramLabel = "ROUND", description = "Only this round of the part.")
    private Integer number;

    @Option(names = "--terms", description = "Says the stitches in UK or US terms; the course's own where not given.")
    private Terms terms;

    ExplainCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    int run() throws CommandException {
        CourseSource source = CourseSource.read(name, terminal);
        Pattern pattern = inTerms(source.course().pattern());
        List<Part> parts = partName == null ? pattern.parts() : List.of(part(pattern));
        for (Part part : parts) {
            explain(part);
        }
        return source.reportErrors(terminal);
    }

    private Part part(Pattern pattern) throws CommandException {
        return pattern.part(partName)
                .orElseThrow(() -> new CommandException.Usage(WORDS.say(
                        "explain-no-part",
                        partName,
                        Wording.list(pattern.parts().stream().map(Part::name).toList()))));
    }

    /** The pattern with its lines turned into the terms that were asked for. */
    private Pattern inTerms(Pattern pattern) {
        if (terms == null || terms == pattern.terms()) {
            return pattern;
        }
        List<PartText> turned = pattern.parts().stream()
                .map(part -> new PartText(
                        part.name(),
                        part.lines().stream()
                                .map(line -> new SourceLine(
                                        roundwright.notation.Turner.turn(line.text(), pattern.terms(), terms),
                                        line.at()))
                                .toList()))
                .toList();
        return PatternReader.read(Optional.of(terms), turned);
    }

    private void explain(Part part) throws CommandException {
        terminal.out().println(WORDS.say("explain-part", part.name()));
        if (number != null) {
            Round round = part.round(number)
                    .orElseThrow(() -> new CommandException.Usage(WORDS.say("explain-no-round", part.name(), number)));
            explain(round.line());
            return;
        }
        part.lines().forEach(this::explain);
    }

    private void explain(Line line) {
        terminal.out().println(WORDS.say("explain-line", line.text()));
        if (!line.words().isEmpty()) {
            terminal.out().println(WORDS.say("explain-words", line.words()));
            terminal.out().println(WORDS.say("explain-words", line.sum()));
        }
    }
}
