package roundwright.course.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The course files that tests read: the samples, and those written to be right or wrong. */
final class CourseTexts {
    private static final List<Path> FOLDERS =
            List.of(Path.of("lessons"), Path.of("src/test/resources/roundwright/course"));

    record CourseText(String name, String text) {
        @Override
        public String toString() {
            return name;
        }
    }

    private CourseTexts() {}

    static List<CourseText> all() {
        return FOLDERS.stream().flatMap(CourseTexts::in).toList();
    }

    static List<CourseText> samples() {
        return in(FOLDERS.get(0)).toList();
    }

    private static Stream<CourseText> in(Path folder) {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk
                    .filter(path -> path.toString().endsWith(".md"))
                    .sorted()
                    .map(CourseTexts::read)
                    .toList()
                    .stream();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static CourseText read(Path path) {
        try {
            return new CourseText(path.getFileName().toString(), Files.readString(path));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
