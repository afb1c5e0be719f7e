package roundwright.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import roundwright.command.CommandRun;

/** What may never be said to a person, and what may never be written. */
final class Saying {
    private static final Pattern INNARDS = Pattern.compile(
            "Exception\\b|\\bat [a-z]+(\\.[a-zA-Z_$]+){2,}\\(|StackOverflow|OutOfMemory|java\\.(lang|util|io)\\.|roundwright\\.[a-z]+\\.");

    private Saying() {}

    /** Runs a command line and looks at how it ended. */
    static CommandRun command(String... arguments) {
        CommandRun run = CommandRun.of(arguments);
        if (run.status() < 0 || run.status() > 2) {
            throw new AssertionError("exit status " + run.status() + ": " + run.err());
        }
        sentence(run.err());
        return run;
    }

    /** A sentence for a person says nothing of the program's insides. */
    static void sentence(String said) {
        if (INNARDS.matcher(said == null ? "null" : said).find() || said == null || said.isBlank() && !said.isEmpty()) {
            throw new AssertionError("said to a person: " + said);
        }
    }

    /** Nothing was written outside the folder that was chosen. */
    static void onlyInside(Path folder, Set<Path> allowed) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            List<Path> others = paths.filter(path -> !path.equals(folder.resolve("inside")) && !allowed.contains(path))
                    .toList();
            if (!others.isEmpty()) {
                throw new AssertionError("written outside: " + others);
            }
        }
    }
}
