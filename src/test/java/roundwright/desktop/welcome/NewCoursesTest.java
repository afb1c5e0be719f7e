package roundwright.desktop.welcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundwright.course.Course;
import roundwright.course.file.CourseFile;
import roundwright.course.file.FileProblem;
import roundwright.notation.Terms;

class NewCoursesTest {
    private static final String BELL = """
            # Bell
            Rnd 1: 6 sc in magic ring (6)
            Rnd 2: inc in each st (12)
            Rnd 3: (sc, inc) x 6 (18)
            Rnds 4-12: sc in each st around (18)

            # Clapper
            Rnd 1: 4 sc in magic ring (4)
            Rnds 2-8: sc in each st around (4)
            """;

    @Test
    void aPastedPatternBecomesACourseWithLessons() {
        CourseFile file = CourseFile.read(NewCourses.text("Little  bell", BELL, 60));
        Course course = file.course();
        assertEquals("Little bell", course.name());
        assertEquals(Terms.US, course.pattern().terms());
        assertEquals(60, course.settings().sessionMinutes());
        assertEquals(
                List.of("Bell", "Clapper"),
                course.pattern().parts().stream().map(part -> part.name()).toList());
        assertFalse(course.lessons().isEmpty());
        assertEquals(
                List.of(), file.problems().stream().filter(FileProblem::isError).toList());
    }

    @Test
    void everyRoundIsInALesson() {
        Course course = CourseFile.read(NewCourses.text("Bell", BELL, 45)).course();
        course.pattern()
                .parts()
                .forEach(part -> part.rounds()
                        .forEach(round -> assertTrue(
                                course.lessonOf(part.name(), round.number()).isPresent(),
                                part.name() + round.number())));
    }

    @Test
    void textWithNoRoundInItBecomesACourseToBeWritten() {
        Course course =
                CourseFile.read(NewCourses.text("Later", "to be written", 90)).course();
        assertEquals("Later", course.name());
        assertEquals(List.of(), course.lessons());
    }

    @Test
    void whatWasUnderstoodIsToldAtOnce() {
        assertEquals(
                "Read: 20 rounds in 2 parts, US terms. Every line adds up.",
                PastePatternCard.told(NewCourses.pattern(BELL)));
        String wrong = PastePatternCard.told(NewCourses.pattern(BELL.replace("(18)\nRnds", "(19)\nRnds")));
        assertTrue(wrong.contains("needs a look") || wrong.contains("need a look"), wrong);
    }

    @Test
    void theSamplesAreThere() {
        assertEquals(List.of("harbour-light", "pocket-planet", "window-pot"), Samples.names());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "Meadow Owl\\n\\nRnd 1: 6 sc in ring (6) | Meadow Owl",
                "\\n# ** The Blue Pot **\\nR1: 6 dc (6) | The Blue Pot",
                "Rnd 1: 6 sc in ring (6)\\nRnd 2: inc x 6 (12) | -",
                "6 sc in magic ring | -",
                "A long sentence about the wool that I found in a shop by the sea and would buy again\\nR1: 6 sc | -",
                "------\\n... | ...",
            })
    void aPatternNamesTheCourse(String pasted, String name) {
        Optional<String> wanted = Optional.ofNullable(name).filter(words -> !words.equals("..."));
        assertEquals(wanted, NewCourses.heading(pasted.replace("\\n", "\n")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                ">> tester: is this right?",
                "> Rnd 9 is missing",
                "- - -",
                "***",
                "----",
                "```",
                "* is where it begins again",
                "<b>soft</b>",
                "    far to the right",
                "+ one more thing",
                "7. and a number",
                "=====",
            })
    void noLineOfAPastedPatternSwallowsTheOthers(String line) {
        String pasted = "Rnd 1: 6 sc in ring (6)\nRnd 2: inc x 6 (12)\n" + line
                + "\nRnd 3: (sc, inc) x 6 (18)\nRnds 4-5: sc around (18)\n";
        var part = CourseFile.read(NewCourses.text("Ball", pasted, 60))
                .course()
                .pattern()
                .parts()
                .get(0);
        List<Integer> numbers = part.rounds().stream()
                .map(round -> round.number())
                .filter(number -> number < 7)
                .toList();
        assertEquals(List.of(1, 2, 3, 4, 5), numbers);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1. 6 sc in ring (6)\n2. inc x 6 (12)\n3. (sc, inc) x 6 (18)",
                "1) 6 sc in ring (6)\n2) inc x 6 (12)\n3) (sc, inc) x 6 (18)",
                "- Rnd 1: 6 sc in ring (6)\n- Rnd 2: inc x 6 (12)\n- Rnd 3: * sc, inc * x 6 (18)",
                "• R1 6 sc in ring (6)\n• R2 inc x 6 (12)\n• R3 (sc, inc) x 6 (18)",
                "> R1: 6 sc in ring (6)\n> R2: inc x 6 (12)\n> R3: (sc, inc) x 6 (18)",
            })
    void listsAndQuotationsOfRoundsStayRounds(String pasted) {
        var part = CourseFile.read(NewCourses.text("Ball", pasted, 60))
                .course()
                .pattern()
                .parts()
                .get(0);
        assertEquals(
                List.of(1, 2, 3),
                part.rounds().stream().map(round -> round.number()).toList());
        assertEquals(18, part.rounds().get(2).steps().orElseThrow().makes());
    }

    @Test
    void nonsenseIsNotSaidToAddUp() {
        assertEquals(
                "There is no round in this yet. A round reads like “Rnd 2: inc x 6 (12)”.",
                PastePatternCard.told(NewCourses.pattern("zz qq 17 ///")));
    }
}
