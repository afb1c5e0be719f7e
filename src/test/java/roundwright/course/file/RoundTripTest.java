package roundwright.course.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.course.Course;
import roundwright.course.file.CourseTexts.CourseText;
import roundwright.notation.Span;

class RoundTripTest {
    static List<CourseText> texts() {
        return CourseTexts.all();
    }

    @ParameterizedTest
    @MethodSource("texts")
    void writingGivesTheSameText(CourseText course) {
        for (String text : List.of(
                course.text(),
                windows(course.text()),
                "\uFEFF" + course.text(),
                course.text().strip())) {
            CourseFile file = CourseFile.read(text);
            assertEquals(text, file.text());
            StringBuilder together = new StringBuilder();
            file.document()
                    .sections()
                    .forEach(section -> together.append(section.span().of(text)));
            assertEquals(text, together.toString());
        }
    }

    private static String windows(String text) {
        return text.replace("\n", "\r\n");
    }

    @ParameterizedTest
    @MethodSource("texts")
    void lineEndsAndByteOrderMarksSayNothing(CourseText course) {
        Course plain = CourseFile.read(course.text()).course();
        for (String text : List.of(
                windows(course.text()),
                course.text().replace('\n', '\r'),
                "\uFEFF" + course.text(),
                "\uFEFF" + windows(course.text()))) {
            CourseFile file = CourseFile.read(text);
            assertEquals(plain.name(), file.course().name());
            assertEquals(plain.introduction(), file.course().introduction());
            assertEquals(plain.settings(), file.course().settings());
            assertEquals(plain.lessons(), file.course().lessons());
            assertEquals(lines(plain), lines(file.course()));
            assertEquals(places(CourseFile.read(course.text())), places(file));
        }
    }

    private static List<String> lines(Course course) {
        return course.pattern().parts().stream()
                .flatMap(part -> part.lines().stream())
                .map(Object::toString)
                .toList();
    }

    private static List<String> places(CourseFile file) {
        return file.problems().stream()
                .map(problem -> problem.line() + ":" + problem.column() + " "
                        + problem.problem().key())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("texts")
    void everyLineStandsWhereItIsSaidToStand(CourseText course) {
        CourseFile file = CourseFile.read(course.text());
        for (PartPlace part : file.parts()) {
            for (Written line : part.lines()) {
                for (Written.Piece piece : line.pieces()) {
                    String there = course.text().substring(piece.there(), piece.there() + piece.length());
                    assertEquals(line.text().substring(piece.here(), piece.here() + piece.length()), there);
                }
                assertTrue(part.section().span().contains(line.span()));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("texts")
    void anyBeginningAndEndOfAFileCanBeRead(CourseText course) {
        String text = course.text();
        for (int cut = 0; cut <= text.length(); cut += 23) {
            sound(text.substring(0, cut));
            sound(text.substring(cut));
        }
    }

    @ParameterizedTest
    @MethodSource("texts")
    void aFileWithItsCharactersShuffledCanBeRead(CourseText course) {
        long seed = Long.getLong("seed", 20260101L);
        Random random = new Random(seed);
        for (int run = 0; run < 40; run++) {
            StringBuilder text = new StringBuilder(course.text());
            for (int change = 0; change < 12 && text.length() > 1; change++) {
                int at = random.nextInt(text.length() - 1);
                String marks = "#-*:\n\r\t >`\\[]()123,\uFEFF";
                switch (random.nextInt(3)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, marks.charAt(random.nextInt(marks.length())));
                    default -> text.setCharAt(at, marks.charAt(random.nextInt(marks.length())));
                }
            }
            sound(text.toString());
        }
    }

    /** Read in good time, given back as it was, and every problem at a place in it. */
    private static void sound(String text) {
        CourseFile file = assertTimeoutPreemptively(Duration.ofSeconds(10), () -> CourseFile.read(text), text);
        assertEquals(text, file.text());
        Places places = Places.of(text);
        for (FileProblem problem : file.problems()) {
            Span span = problem.problem().span();
            assertTrue(span.end() <= text.length(), () -> problem + " is outside of\n" + text);
            assertEquals(places.line(span.start()), problem.line());
            new ProblemPrinter("x", text).print(problem.problem());
        }
    }
}
