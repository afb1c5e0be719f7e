package roundwright.command;

import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;
import roundwright.wording.Wording;

/**
 * The verbs of the command line. A verb is a class with picocli's annotations that extends {@link Verb}; to add one, write
 * it and name it in {@link #verbs}.
 */
public final class Commands {
    private static final Wording WORDS = Wording.of("command");

    private Commands() {}

    /** Every verb, in the order in which the help lists them. */
    private static List<Verb> verbs(Terminal terminal) {
        return List.of(
                new RoundsCommand(terminal),
                new CheckCommand(terminal),
                new ExplainCommand(terminal),
                new TurnCommand(terminal),
                new PlanCommand(terminal),
                new DatesCommand(terminal, Clock.systemUTC()),
                new MistakesCommand(terminal),
                new MessagesCommand(terminal),
                new SheetsCommand(terminal, Clock.systemUTC()),
                new SampleCommand(terminal, Clock.systemUTC()),
                new BackupCommand(terminal, Clock.systemUTC()),
                new RestoreCommand(terminal, Clock.systemUTC()),
                new RescueCommand(terminal),
                new ExportCommand(terminal, Clock.systemUTC()),
                new InitialsCommand(terminal, Clock.systemUTC()),
                new EraseCommand(terminal, Clock.systemUTC()));
    }

    /** Runs one command line and returns its exit status. Nothing but the terminal is written to, and nothing is thrown. */
    public static int run(Terminal terminal, String... arguments) {
        CommandLine line = commandLine(terminal);
        try {
            return line.execute(arguments);
        } finally {
            terminal.out().flush();
            terminal.err().flush();
        }
    }

    private static CommandLine commandLine(Terminal terminal) {
        CommandLine line = new CommandLine(new Top());
        verbs(terminal).forEach(line::addSubcommand);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setOut(terminal.out());
        line.setErr(terminal.err());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setParameterExceptionHandler((problem, given) -> wrongUsage(terminal, problem));
        line.setExecutionExceptionHandler((failure, asked, parsed) -> failed(terminal, failure));
        return line;
    }

    private static int wrongUsage(Terminal terminal, CommandLine.ParameterException problem) {
        terminal.err().println(problem.getMessage());
        problem.getCommandLine().usage(terminal.err(), Ansi.OFF);
        return ExitStatus.WRONG_USAGE;
    }

    private static int failed(Terminal terminal, Exception failure) {
        if (failure instanceof CommandException expected) {
            terminal.err().println(expected.getMessage());
            return expected.status();
        }
        terminal.err().println(WORDS.say("unexpected", place(failure)));
        return ExitStatus.MACHINE_FAILED;
    }

    /** Kind and place of a failure, without its own words, which may hold names. */
    private static String place(Exception failure) {
        String kind = failure.getClass().getSimpleName().replaceFirst("Exception$", "");
        return Stream.of(failure.getStackTrace())
                .filter(frame -> frame.getClassName().startsWith("roundwright."))
                .findFirst()
                .map(frame -> kind + " in " + frame.getFileName() + ", line " + frame.getLineNumber())
                .orElse(kind);
    }

    /** The program's own name on the command line; without a verb it says what there is. */
    @Command(
            name = "roundwright",
            versionProvider = Version.class,
            description = "Plans a crochet course in the round, checks its pattern, and explains students' counts.",
            footer = {"", "Without a verb the desktop opens; `roundwright FILE.db` opens that file."})
    private static final class Top extends Verb {
        @Option(
                names = {"-V", "--version"},
                versionHelp = true,
                description = "Shows the program's version.")
        private boolean version;

        @Override
        int run() throws CommandException {
            throw new CommandException.Usage(WORDS.say("no-verb"));
        }
    }

    /** The version that the build wrote into the jar. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Commands.class.getPackage().getImplementationVersion();
            return new String[] {"roundwright " + (version == null ? WORDS.say("unreleased") : version)};
        }
    }
}
