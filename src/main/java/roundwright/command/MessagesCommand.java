package roundwright.command;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.group.messages.Finding;
import roundwright.group.messages.MessagesReader;
import roundwright.group.messages.Reading;
import roundwright.group.messages.Unplaced;
import roundwright.wording.Wording;

/**
 * {@code messages}: finds the counts in pasted messages.
 *
 * <p>Without {@code --json} it says each count with how sure it is, and what could not be placed. With it, one array comes for each
 * file, on one line. Nothing is filed anywhere.
 */
@Command(name = "messages", description = "Finds the counts in pasted messages.")
final class MessagesCommand extends Verb {
    private static final Wording WORDS = Wording.of("command");

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "COURSE.md", description = "The course.")
    private String courseName;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "FILE",
            description = "Texts with messages; - reads standard input.")
    private List<String> names;

    @Option(names = "--json", description = "One JSON array a file, one a line.")
    private boolean json;

    @Option(
            names = "--students",
            paramLabel = "NAMES.txt",
            description = "The names of the group, one a line; without it names are taken as they are written.")
    private String studentsName;

    MessagesCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    int run() throws CommandException {
        CourseSource course = CourseSource.read(courseName, terminal);
        MessagesReader reader = new MessagesReader(course.course(), students());
        int status = course.reportErrors(terminal);
        for (String name : names) {
            TextSource source = TextSource.read(name, terminal);
            List<Finding> findings = reader.read(source.text());
            if (json) {
                terminal.out().println(Json.line(MessagesJson.of(source.text(), findings)));
            } else {
                findings.forEach(finding -> terminal.out().println(sentence(source.text(), finding)));
            }
        }
        return status;
    }

    private List<String> students() throws CommandException {
        if (studentsName == null) {
            return List.of();
        }
        return TextSource.read(studentsName, terminal)
                .text()
                .replace("\uFEFF", "")
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private static String sentence(String text, Finding finding) {
        String words = words(text, finding);
        if (finding instanceof Reading reading) {
            return WORDS.say(
                    "messages." + kind(reading),
                    reading.student().orElse(WORDS.say("messages.somebody")),
                    reading.part().map(part -> part + " ").orElse("")
                            + (reading.from() == reading.to()
                                    ? Integer.toString(reading.from())
                                    : reading.from() + "-" + reading.to()),
                    reading.count(),
                    Math.round(100 * reading.confidence()),
                    words);
        }
        return WORDS.say("messages.unplaced." + ((Unplaced) finding).reason().word(), words);
    }

    private static String kind(Reading reading) {
        return reading.doubtful() ? "doubtful" : reading.inferred() ? "inferred" : "reading";
    }

    private static String words(String text, Finding finding) {
        return finding.source().of(text).replaceAll("\\s+", " ").strip();
    }
}
