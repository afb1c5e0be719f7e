package roundwright.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.course.CourseSettings.Tension;
import roundwright.course.file.CourseFile;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.PlannedLesson;
import roundwright.course.planning.WrittenLessons;
import roundwright.course.preparation.YarnUse;
import roundwright.notation.Terms;
import roundwright.pattern.Round;
import roundwright.pattern.Verdict;

/** The courses that come with the program: right to the last stitch, fit for their evenings, and pieces that can be made. */
class SampleCoursesTest {
    private static final Path FOLDER = Path.of("lessons");

    record Sample(String file, Terms terms, int parts, int lessons) {}

    static List<Sample> samples() {
        return List.of(
                new Sample("harbour-light.md", Terms.UK, 4, 8),
                new Sample("pocket-planet.md", Terms.US, 2, 4),
                new Sample("window-pot.md", Terms.UK, 3, 5));
    }

    private static CourseFile file(String name) {
        try {
            return CourseFile.read(Files.readString(FOLDER.resolve(name)));
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }

    private static Course course(String name) {
        return file(name).course();
    }

    @Test
    void everyFileOfTheFolderIsTested() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertEquals(
                    samples().stream().map(Sample::file).toList(),
                    files.map(path -> path.getFileName().toString()).sorted().toList());
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void nothingIsToBeReported(Sample sample) {
        assertEquals(List.of(), file(sample.file()).problems());
        assertEquals(sample.terms(), course(sample.file()).pattern().terms());
        assertEquals(sample.parts(), course(sample.file()).pattern().parts().size());
        assertEquals(sample.lessons(), course(sample.file()).lessons().size());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyRoundAddsUpAndStatesItsCount(Sample sample) {
        course(sample.file())
                .pattern()
                .parts()
                .forEach(part -> part.rounds()
                        .forEach(round -> assertEquals(
                                Verdict.ADDS_UP,
                                round.line().verdict(),
                                round.line().text())));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyLessonSaysWhatATeacherNeeds(Sample sample) {
        for (Lesson lesson : course(sample.file()).lessons()) {
            for (String key : List.of("bring", "homework", "note")) {
                assertTrue(!lesson.words(key).isEmpty(), lesson.name() + " has no " + key);
            }
            assertTrue(lesson.number() == 1 || !lesson.words("recap").isEmpty(), lesson.name() + " has no recap");
            assertTrue(!lesson.rounds().isEmpty(), lesson.name());
        }
        assertTrue(course(sample.file()).settings().words().stream()
                .anyMatch(entry -> entry.key().equals("caution")));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyLessonFitsItsEvening(Sample sample) {
        Course course = course(sample.file());
        double pace = course.settings().pace().orElseThrow();
        PlanItems items = PlanItems.of(course.uses(), pace);
        PlanSettings settings = new PlanSettings(course.settings().sessionMinutes(), pace, 2, 30);
        Plan plan =
                WrittenLessons.plan(items.items(), settings, course.lessons()).orElseThrow();
        assertEquals(sample.lessons(), plan.lessons().size());
        for (PlannedLesson lesson : plan.lessons()) {
            assertTrue(lesson.minutes().total() <= settings.minutes(), lesson + " is too long");
            assertTrue(lesson.minutes().total() >= 60, lesson + " is too short");
            assertTrue(
                    lesson.introduces().size() <= settings.mostNew(lesson.number() == 1), lesson + " has too much new");
        }
    }

    /** Metres to 100 g, in the middle of what the trade gives for the weight. */
    private static final Map<String, Integer> METRES = Map.of("aran", 165, "worsted", 165, "chunky", 105);

    @ParameterizedTest
    @MethodSource("samples")
    void theYarnIsEnoughAndNotMuchTooMuch(Sample sample) {
        Course course = course(sample.file());
        String yarn = course.settings().yarn().orElseThrow();
        int metres = METRES.get(yarn.substring(0, yarn.indexOf(',')));
        Map<String, Double> used = YarnUse.of(course).orElseThrow().metres();
        Matcher grams = Pattern.compile("(\\d+) g (\\w+)").matcher(yarn);
        int colours = 0;
        while (grams.find()) {
            double bought = Integer.parseInt(grams.group(1)) * metres / 100.0;
            double needed = used.get(grams.group(2));
            assertTrue(bought >= needed && bought <= 2.6 * needed, grams.group() + ": " + needed + " m of " + bought);
            colours++;
        }
        assertEquals(used.size(), colours);
    }

    /** Width of a tube of so many stitches, in millimetres. */
    private static double across(int stitches, Tension tension) {
        return stitches * 100 / tension.stitches() / Math.PI;
    }

    private static List<Round> rounds(String file, String part) {
        return course(file).pattern().part(part).orElseThrow().rounds();
    }

    private static int widest(String file, String part) {
        return rounds(file, part).stream()
                .mapToInt(round -> round.count().orElseThrow())
                .max()
                .orElseThrow();
    }

    private static Tension tension(String file) {
        return course(file).settings().tension().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aFlatBeginningOfSixARoundLiesFlat(Sample sample) {
        Tension tension = tension(sample.file());
        double flat = 2 * Math.PI * (100 / tension.rounds()) / (100 / tension.stitches());
        assertEquals(6, flat, 0.5, sample.file());
    }

    @Test
    void theLighthouseIsAsLargeAsItSays() {
        Tension tension = tension("harbour-light.md");
        double round = 100 / tension.rounds();
        assertEquals(74, across(widest("harbour-light.md", "Tower"), tension), 1);
        double wall = rounds("harbour-light.md", "Tower").stream()
                        .filter(one -> one.number() >= 8 && one.number() <= 34)
                        .count()
                * round;
        double lantern = (rounds("harbour-light.md", "Lantern").size() - 3 + 0.5) * round;
        double slant = 8 * round;
        double roof = Math.sqrt(slant * slant - Math.pow(across(24, tension) / 2, 2));
        assertEquals(210, wall + round + lantern + roof, 8);
        assertTrue(across(36, tension) > across(24, tension) + 15, "the gallery stands out round the tower");
        assertTrue(across(24, tension) > across(18, tension), "the roof covers the lantern");
    }

    @Test
    void thePlanetIsABallAndItsRingLiesFlat() {
        Tension tension = tension("pocket-planet.md");
        List<Round> planet = rounds("pocket-planet.md", "Planet");
        assertEquals(57, across(36, tension), 1);
        double increases = planet.stream()
                        .takeWhile(round -> round.count().orElseThrow() < 36)
                        .count()
                + 1;
        double even = planet.stream()
                        .filter(round -> round.count().orElseThrow() == 36)
                        .count()
                - 1;
        assertEquals(increases, even, 1.0, "as many even rounds as rounds of increases, or nearly");
        double round = 100 / tension.rounds();
        assertEquals(57, (planet.size() - 1) * round * 2 / Math.PI + round, 8, "as high as it is wide");
        List<Round> ring = rounds("pocket-planet.md", "Ring");
        for (int index = 1; index < 4; index++) {
            assertEquals(
                    6,
                    ring.get(index).count().orElseThrow()
                            - ring.get(index - 1).count().orElseThrow());
        }
        assertEquals(OptionalInt.of(36), ring.get(0).count());
    }

    @Test
    void theCoverFitsItsPot() {
        Tension tension = tension("window-pot.md");
        double round = 100 / tension.rounds();
        assertEquals(110, across(widest("window-pot.md", "Base"), tension), 4);
        assertEquals(110, 2 * rounds("window-pot.md", "Base").size() * round, 4);
        double high = (rounds("window-pot.md", "Wall").size() + 0.5 + 2) * round;
        assertEquals(105, high, 5);
        assertTrue(across(widest("window-pot.md", "Wall"), tension) > 120);
    }
}
