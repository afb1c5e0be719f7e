package roundwright.course.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.course.Course;
import roundwright.course.Lesson;
import roundwright.pattern.Part;
import roundwright.technique.Techniques;

/** Course files beside what is read out of them and what is said of them. {@code -Dgolden.write} writes them anew. */
class GoldenTest {
    private static final Path FOLDER = Path.of("src/test/resources/roundwright/course");

    static List<Path> files() throws IOException {
        try (Stream<Path> walk = Files.walk(FOLDER)) {
            return walk.filter(path -> path.toString().endsWith(".md")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void readsAsBefore(Path path) throws IOException {
        String text = Files.readString(path);
        CourseFile file = CourseFile.read(text);
        Path golden = path.resolveSibling(path.getFileName().toString().replace(".md", ".txt"));
        String now = said(path.getFileName().toString(), file) + read(file.course());
        boolean missing = !Files.exists(golden);
        if (missing || System.getProperty("golden.write") != null) {
            Files.writeString(golden, now);
        }
        if (missing) {
            fail("wrote " + golden + "; read it, and run again");
        }
        assertEquals(Files.readString(golden), now);
    }

    @ParameterizedTest
    @MethodSource("files")
    void onlyTheBadHaveErrors(Path path) throws IOException {
        boolean bad = path.getParent().getFileName().toString().equals("bad");
        CourseFile file = CourseFile.read(Files.readString(path));
        assertTrue(bad == !file.problems().isEmpty() || !bad && !file.hasErrors(), path.toString());
    }

    @Test
    void noProblemNamesTheSameThingAsFoundAndAsExpected() throws IOException {
        for (Path path : files()) {
            CourseFile file = CourseFile.read(Files.readString(path));
            for (FileProblem problem : file.problems()) {
                String there = problem.replaceable().of(file.text());
                assertTrue(
                        problem.problem().suggestion().filter(there::equals).isEmpty(),
                        path + " suggests what is there: " + problem);
            }
        }
    }

    private static String said(String name, CourseFile file) {
        ProblemPrinter printer = new ProblemPrinter(name, file.text());
        StringBuilder said = new StringBuilder();
        file.problems().forEach(problem -> said.append(printer.print(problem.problem())));
        return said.toString();
    }

    private static String read(Course course) {
        StringBuilder read = new StringBuilder("----\n");
        read.append(course.name()).append('\n').append(course.introduction()).append('\n');
        read.append(course.settings()).append('\n');
        for (Part part : course.pattern().parts()) {
            read.append(part.name()).append('\n');
            part.lines().forEach(line -> read.append("  ").append(line).append('\n'));
        }
        for (Lesson lesson : course.lessons()) {
            read.append(lesson).append('\n');
        }
        course.techniques().all().stream()
                .filter(technique -> !Techniques.catalogue().all().contains(technique))
                .forEach(own -> read.append(own).append('\n'));
        return read.toString();
    }
}
