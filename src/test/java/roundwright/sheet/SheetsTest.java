package roundwright.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.course.Course;
import roundwright.sheet.content.GroupReports;
import roundwright.sheet.style.SheetStyle;
import roundwright.sheet.style.TypeSetting;

/** What the sheets say. */
class SheetsTest {
    private static final Course LIGHT = SampleSheets.course("harbour-light.md");
    private static final List<Sheet> GROUP = Sheets.of(SheetOrder.of(LIGHT)
            .forGroup(SampleSheets.group(LIGHT, SampleSheets.HARD_NAMES.subList(0, 4)))
            .styled(List.of(
                    SheetStyle.PLAIN, SheetStyle.PLAIN.typed(TypeSetting.LARGE).handed(true))));

    private record Case(String file, List<String> says, List<String> saysNot) {
        @Override
        public String toString() {
            return file;
        }
    }

    static Stream<Case> cases() {
        return Stream.of(
                new Case(
                        "harbour-light-lesson-3-teacher.pdf",
                        List.of(
                                "The wall leans in",
                                "Recap of last time Where is the ridge?",
                                "Teach decrease",
                                "Work Tower 12–19",
                                "A strip of thick yarn with three decreases in it",
                                "Rnd 12: (12 dc, dec) x 3 (39)",
                                "3 × (12 + 2) = 42 used of 42",
                                "never one above the other",
                                "The rules where you live"),
                        List.of("My count")),
                new Case(
                        "harbour-light-lesson-3-student.pdf",
                        List.of(
                                "Draw a loop up through the next stitch",
                                "12 Rnd 12: (12 dc, dec) x 3 (39)",
                                "The same as round 13.",
                                "anticlockwise, the way you work",
                                "dc double crochet single crochet",
                                "This pattern uses UK terms.",
                                "Bring the wall with 36 stitches",
                                "Rest hands and eyes every half hour"),
                        List.of("never one above the other", "Came to", "clockwise when")),
                new Case(
                        "harbour-light-lesson-3-student-large-left-handed.pdf",
                        List.of(
                                "Round 14 Rnds 13-15: dc in each st around. (39)",
                                "You start with 42 stitches. At the end you have 39.",
                                "small triangle, clockwise"),
                        List.of("The same as round 13", "anticlockwise")),
                new Case(
                        "harbour-light-overview.pdf",
                        List.of(
                                "Harbour light",
                                "Tuesday evenings",
                                "5 Jan 2027 · 90 minutes",
                                "Gallery 1–9",
                                "crab stitch"),
                        List.of("Ines")),
                new Case("harbour-light-register.pdf", List.of("Register", "Ines ✓", "נועה"), List.of()),
                new Case(
                        "harbour-light-counts.pdf",
                        List.of("Lesson 1: Into the ring", "6 st", "For the teacher only"),
                        List.of()),
                new Case(
                        "harbour-light-progress-02-script-alert-1-script.pdf",
                        List.of(
                                "<script>alert(1)</script>",
                                "You can do this",
                                "✓ Magic ring",
                                "What comes next",
                                "Tower 8"),
                        List.of("Ines")),
                new Case(
                        "harbour-light-last-page-01-ines.pdf",
                        List.of("Made by hand", "Harbour light", "Ines", "64 rounds", "crab stitch"),
                        List.of("script")));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void says(Case expected) throws IOException {
        String words = SampleSheets.words(SampleSheets.bytes(GROUP, expected.file()));
        expected.says().forEach(text -> assertTrue(words.contains(text), () -> text + " is not in: " + words));
        expected.saysNot().forEach(text -> assertFalse(words.contains(text), () -> text + " is in: " + words));
        assertFalse(words.contains("□"), () -> "a character without a shape: " + words);
    }

    @Test
    void theSameInputGivesTheSameBytes() throws InterruptedException {
        for (String file : List.of("harbour-light-lesson-3-student.pdf", "harbour-light-counts.pdf")) {
            byte[] once = SampleSheets.bytes(GROUP, file);
            Thread.sleep(1100);
            Course again = SampleSheets.course("harbour-light.md");
            List<Sheet> anew = Sheets.of(
                    SheetOrder.of(again).forGroup(SampleSheets.group(again, SampleSheets.HARD_NAMES.subList(0, 4))));
            assertArrayEquals(once, SampleSheets.bytes(anew, file), file);
        }
    }

    @Test
    void everyFileHasItsOwnPlainName() {
        Course course = SampleSheets.read("# ../Ünder <b>: *\n\n## Part: A\n\n- Rnd 1: 6 dc in magic ring. (6)\n");
        List<Sheet> sheets = Sheets.of(SheetOrder.of(course)
                .forGroup(SampleSheets.group(course, SampleSheets.HARD_NAMES))
                .styled(SheetOrder.everyStyle()));
        Set<String> names = sheets.stream().map(Sheet::file).collect(Collectors.toSet());
        assertEquals(sheets.size(), names.size());
        names.forEach(name -> assertTrue(name.matches("[a-z0-9-]{1,100}\\.(pdf|html)"), name));
    }

    @Test
    void aCourseWithoutLessonsIsSplitAndSaysSo() throws IOException {
        Course course = SampleSheets.read(
                "# Egg\n\n## Part: Egg\n\n- Rnd 1: 6 dc in magic ring. (6)\n- Rnd 2: inc x 6 (12)\n- Rnds 3-9: dc around (12)\n");
        List<Sheet> sheets = Sheets.of(SheetOrder.of(course));
        assertTrue(SampleSheets.words(SampleSheets.bytes(sheets, "egg-overview.pdf"))
                .contains("no lessons yet"));
        assertTrue(SampleSheets.words(SampleSheets.bytes(sheets, "egg-lesson-1-student.pdf"))
                .contains("six double crochet into the ring"));
    }

    @Test
    void aLineThatWasNotUnderstoodIsPrintedAsItStandsAndSaysSo() throws IOException {
        Course course = SampleSheets.read("""
                # Odd

                ## Part: A

                - Rnd 1: 6 dc in magic ring. (6)
                - Rnd 2: flumph the gribble <b>twice</b> & 6 dc wibble (12)
                - Rnd 3: dc in each st around. (12)

                ## Lesson 1: One

                - rounds: A 1-3
                """);
        List<Sheet> sheets = Sheets.of(SheetOrder.of(course).only(EnumSet.of(SheetKind.STUDENT, SheetKind.TEACHER)));
        String student = SampleSheets.words(SampleSheets.bytes(sheets, "odd-lesson-1-student.pdf"));
        assertTrue(student.contains("flumph the gribble <b>twice<"), student);
        assertTrue(student.contains("could not be checked"), student);
        String teacher = SampleSheets.words(SampleSheets.bytes(sheets, "odd-lesson-1-teacher.pdf"));
        assertTrue(teacher.contains("This line was not understood"), teacher);
    }

    @Test
    void theLastPageOfWhoHasCountedNothingSaysNoSum() throws IOException {
        GroupReports group = SampleSheets.group(LIGHT, List.of("Ines"));
        GroupReports fresh = new GroupReports(
                group.name(), group.students(), List.of(), group.sessions(), group.marks(), group.today());
        List<Sheet> sheets = Sheets.of(SheetOrder.of(LIGHT).forGroup(fresh).only(EnumSet.of(SheetKind.FINISH)));
        String words = SampleSheets.words(SampleSheets.bytes(sheets, "harbour-light-last-page-01-ines.pdf"));
        assertTrue(words.contains("In the making"), words);
        assertFalse(words.contains("0 rounds"), words);
        assertFalse(words.contains("Learned"), words);
    }

    @Test
    void oneLessonAloneHasOnlyItsSheets() {
        Set<String> files = Sheets.of(SheetOrder.of(LIGHT).lesson(2)).stream()
                .map(Sheet::file)
                .collect(Collectors.toSet());
        assertEquals(
                Set.of(
                        "harbour-light-lesson-2-teacher.pdf",
                        "harbour-light-lesson-2-student.pdf",
                        "harbour-light-phone.html"),
                files);
    }
}
