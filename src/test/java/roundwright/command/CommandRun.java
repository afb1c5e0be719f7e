package roundwright.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** A command line run in a test: what it said and how it ended. */
public record CommandRun(int status, String out, String err) {
    public static CommandRun of(String... arguments) {
        return withInput("", arguments);
    }

    public static CommandRun withInput(String input, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        ByteArrayInputStream in = new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8));
        int status = Commands.run(Terminal.of(in, out, err), arguments);
        return new CommandRun(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
