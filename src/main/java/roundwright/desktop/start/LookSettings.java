package roundwright.desktop.start;

import java.awt.Rectangle;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import roundwright.desktop.ask.Versions;
import roundwright.desktop.look.Theme;

/**
 * How the window looked last time. What cannot be read, or makes no sense, is as if it had never been written.
 *
 * @param theme light or dark
 * @param zoom from 1 to 2
 * @param bounds where the window stood
 * @param version of the program that wrote them; nothing where it was never started before
 */
public record LookSettings(Theme theme, float zoom, Optional<Rectangle> bounds, Optional<String> version) {
    private static final String FILE = "look.properties";
    private static final String FIRST_VERSION = "0.1.0";
    private static final int SMALLEST = 300;

    public static LookSettings read(Path folder) {
        Properties read = new Properties();
        try (Reader reader = Files.newBufferedReader(folder.resolve(FILE), StandardCharsets.UTF_8)) {
            read.load(reader);
        } catch (IOException | IllegalArgumentException none) {
            read.clear();
        }
        Theme theme = "dark".equals(read.getProperty("theme")) ? Theme.DARK : Theme.LIGHT;
        float zoom = (float) Math.max(1, Math.min(2, number(read, "zoom").orElse(100) / 100.0));
        return new LookSettings(theme, zoom, bounds(read), version(read));
    }

    private static Optional<Rectangle> bounds(Properties read) {
        return number(read, "x")
                .flatMap(x -> number(read, "y")
                        .flatMap(y -> number(read, "width")
                                .flatMap(width ->
                                        number(read, "height").map(height -> new Rectangle(x, y, width, height)))))
                .filter(found -> found.width >= SMALLEST && found.height >= SMALLEST);
    }

    /** The first version did not write which it was. */
    private static Optional<String> version(Properties read) {
        return read.isEmpty()
                ? Optional.empty()
                : Optional.of(read.getProperty("version", FIRST_VERSION)).filter(Versions.all()::contains);
    }

    private static Optional<Integer> number(Properties read, String key) {
        return Optional.ofNullable(read.getProperty(key))
                .filter(value -> value.matches("-?\\d{1,6}"))
                .map(Integer::valueOf);
    }

    /** Writes them for the next start; it does no harm if that fails. */
    public void write(Path folder) {
        Properties written = new Properties();
        written.setProperty("theme", theme == Theme.DARK ? "dark" : "light");
        written.setProperty("zoom", String.valueOf(Math.round(zoom * 100)));
        version.ifPresent(number -> written.setProperty("version", number));
        bounds.ifPresent(found -> {
            written.setProperty("x", String.valueOf(found.x));
            written.setProperty("y", String.valueOf(found.y));
            written.setProperty("width", String.valueOf(found.width));
            written.setProperty("height", String.valueOf(found.height));
        });
        try {
            Files.createDirectories(folder);
            try (Writer writer = Files.newBufferedWriter(folder.resolve(FILE), StandardCharsets.UTF_8)) {
                written.store(writer, null);
            }
        } catch (IOException cannot) {
            // the next window opens as the first one did
        }
    }
}
