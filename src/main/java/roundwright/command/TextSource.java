package roundwright.command;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import roundwright.wording.Wording;

/**
 * A text that a command was asked to read: a file, or standard input where the name is {@code -}.
 *
 * <p>UTF-8, or UTF-16 where it begins with a byte order mark; what is neither is taken for Windows-1252, which old editors
 * write, and the person is told. A byte order mark is kept, as the first character of the text.
 *
 * @param name the file as the person named it, for messages
 */
public record TextSource(String name, String text) {
    private static final Wording WORDS = Wording.of("command");
    private static final int LARGEST = 64 << 20;

    public static TextSource read(String name, Terminal terminal) throws CommandException {
        return new TextSource(shown(name), decode(shown(name), bytes(name, terminal), terminal));
    }

    /** What a file holds, whatever it is. */
    static byte[] bytes(String name, Terminal terminal) throws CommandException {
        return name.equals("-") ? standardInput(terminal) : file(name);
    }

    /** What a file is called in messages. */
    static String shown(String name) {
        return name.equals("-") ? WORDS.say("standard-input") : name;
    }

    private static byte[] standardInput(Terminal terminal) throws CommandException {
        try {
            return terminal.in().readNBytes(LARGEST);
        } catch (IOException failure) {
            throw new CommandException.Machine(WORDS.say("cannot-read", WORDS.say("standard-input"), reason(failure)));
        }
    }

    private static byte[] file(String name) throws CommandException {
        try {
            Path path = Path.of(name);
            if (Files.isDirectory(path)) {
                throw new CommandException.Machine(WORDS.say("is-a-folder", name));
            }
            if (Files.size(path) > LARGEST) {
                throw new CommandException.Input(WORDS.say("too-large", name, LARGEST >> 20));
            }
            return Files.readAllBytes(path);
        } catch (NoSuchFileException | InvalidPathException missing) {
            throw new CommandException.Machine(WORDS.say("no-such-file", name));
        } catch (AccessDeniedException denied) {
            throw new CommandException.Machine(WORDS.say("may-not-read", name));
        } catch (IOException failure) {
            throw new CommandException.Machine(WORDS.say("cannot-read", name, reason(failure)));
        }
    }

    private static String reason(IOException failure) {
        return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    }

    private static String decode(String name, byte[] bytes, Terminal terminal) throws CommandException {
        if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return notBinary(name, text);
        } catch (CharacterCodingException notUtf8) {
            String text = notBinary(name, new String(bytes, Charset.forName("windows-1252")));
            terminal.err().println(WORDS.say("not-utf-8", name));
            return text;
        }
    }

    private static String notBinary(String name, String text) throws CommandException {
        int zero = text.indexOf('\0');
        if (zero >= 0) {
            throw new CommandException.Input(WORDS.say("not-a-text", name, zero));
        }
        return text;
    }

    private static boolean startsWith(byte[] bytes, int first, int second) {
        return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }
}
