package roundwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Option;

/** One verb of the command line: its options are picocli's annotations, its work is {@link #run}. */
abstract class Verb implements Callable<Integer> {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this help.")
    private boolean help;

    /** Does the work and returns the exit status, {@link ExitStatus}. */
    abstract int run() throws CommandException;

    @Override
    public final Integer call() throws CommandException {
        return run();
    }
}
