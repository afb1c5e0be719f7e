package roundwright.command;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/**
 * What a command reads and writes: results go to {@code out}, messages to {@code err}, both in UTF-8.
 *
 * @param in standard input, read where a file is named {@code -}
 */
public record Terminal(InputStream in, PrintWriter out, PrintWriter err) {
    public static Terminal of(InputStream in, OutputStream out, OutputStream err) {
        return new Terminal(
                in,
                new PrintWriter(out, false, StandardCharsets.UTF_8),
                new PrintWriter(err, true, StandardCharsets.UTF_8));
    }
}
