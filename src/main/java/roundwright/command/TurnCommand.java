package roundwright.command;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.notation.Terms;
import roundwright.notation.Turner;
import roundwright.pattern.PatternReader;

/** {@code turn}: rewrites pattern lines in the other terms and leaves all other text alone. */
@Command(name = "turn", description = "Rewrites pattern lines in the other terms, leaving all other text alone.")
final class TurnCommand extends Verb {
    private final Terminal terminal;

    @Option(names = "--to", required = true, description = "The terms to write in: UK or US.")
    private Terms to;

    @Option(names = "--from", description = "The terms it is written in; found out from the file where not given.")
    private Terms from;

    @Parameters(paramLabel = "FILE", description = "A file of pattern lines; - reads standard input.")
    private String name;

    TurnCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    int run() throws CommandException {
        String text = TextSource.read(name, terminal).text();
        Terms written = from != null
                ? from
                : PatternReader.readBare(Optional.empty(), text).terms();
        StringBuilder turned = new StringBuilder(text.length());
        int at = 0;
        while (at < text.length()) {
            int end = text.indexOf('\n', at);
            int next = end < 0 ? text.length() : end + 1;
            turned.append(Turner.turn(text.substring(at, next), written, to));
            at = next;
        }
        terminal.out().print(turned);
        return ExitStatus.FINE;
    }
}
