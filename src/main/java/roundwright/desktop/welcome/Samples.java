package roundwright.desktop.welcome;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The sample courses that come with the program. */
public final class Samples {
    private static final List<String> NAMES = List.of("harbour-light", "pocket-planet", "window-pot");
    private static final String FOLDER = "/roundwright/lessons/";

    private Samples() {}

    /** Names of the samples' files, without their ending. */
    public static List<String> names() {
        return NAMES.stream()
                .filter(name -> Samples.class.getResource(FOLDER + name + ".md") != null)
                .toList();
    }

    /** The course file of a sample. */
    public static Optional<String> text(String name) {
        try (InputStream stream = Samples.class.getResourceAsStream(FOLDER + name + ".md")) {
            return stream == null
                    ? Optional.empty()
                    : Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
