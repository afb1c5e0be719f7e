package roundwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The verb {@code plan} on the courses that come with the program, and on courses it cannot plan. */
class PlanCommandTest {
    private static final String LIGHTHOUSE = "lessons/harbour-light.md";

    @TempDir
    Path folder;

    private Path course(String text) throws IOException {
        return Files.writeString(folder.resolve("course.md"), text);
    }

    private static Map<String, Object> json(String... options) {
        String[] arguments = new String[options.length + 2];
        arguments[0] = "plan";
        arguments[1] = "--json";
        System.arraycopy(options, 0, arguments, 2, options.length);
        CommandRun run = CommandRun.of(arguments);
        assertEquals(0, run.status(), run.err());
        return ReadJson.object(run.out());
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> list(Map<String, Object> json, String key) {
        return (List<Map<String, Object>>) json.get(key);
    }

    private static double number(Map<String, Object> json, String key) {
        return (Double) json.get(key);
    }

    @ParameterizedTest
    @CsvSource({
        "lessons/harbour-light.md, 8, 90, 2, 0",
        "lessons/harbour-light.md, 6, 100, 1, 30",
        "lessons/pocket-planet.md, 5, 60, 2, 45",
        "lessons/window-pot.md, 3, 75, 3, 10"
    })
    void theCostFollowsFromWhatIsSaid(String file, int sessions, int minutes, int mostNew, int homework) {
        Map<String, Object> plan = json(
                file,
                "--sessions=" + sessions,
                "--minutes=" + minutes,
                "--most-new=" + mostNew,
                "--homework=" + homework);
        List<Map<String, Object>> lessons = list(plan, "lessons");
        assertEquals(sessions, lessons.size());
        double cost = 0;
        int next = 0;
        for (Map<String, Object> lesson : lessons) {
            assertEquals(next, number(lesson, "from"));
            cost += cost(plan, lesson, lesson == lessons.get(sessions - 1));
            next = (int) number(lesson, lesson.get("homework_to") == null ? "to" : "homework_to") + 1;
        }
        assertEquals(list(plan, "items").size(), next);
        assertEquals(cost, number(plan, "cost"), 1e-9);
        assertEquals(true, plan.get("proven"));
    }

    private static double cost(Map<String, Object> plan, Map<String, Object> lesson, boolean last) {
        @SuppressWarnings("unchecked")
        Map<String, Object> settings = (Map<String, Object>) plan.get("settings");
        boolean first = number(lesson, "number") == 1;
        double minutes = first ? 15 : 25;
        int introduced = 0;
        for (int i = (int) number(lesson, "from"); i <= number(lesson, "to"); i++) {
            Map<String, Object> item = list(plan, "items").get(i);
            minutes += number(item, "working") + number(item, "counting") + number(item, "teaching");
            introduced += ((List<?>) item.get("new")).size();
        }
        double spare = number(settings, "minutes") - minutes;
        double tooMany = Math.max(0, introduced - (first ? 3 : number(settings, "most_new")));
        double cost = (spare < 0 ? 4 : last ? 0 : 0.25) * spare * spare + 4 * tooMany * tooMany;
        cost += stop(list(plan, "items"), (int) number(lesson, "to"));
        return lesson.get("homework_to") == null
                ? cost
                : cost + stop(list(plan, "items"), (int) number(lesson, "homework_to")) / 2;
    }

    private static double stop(List<Map<String, Object>> items, int at) {
        Map<String, Object> item = items.get(at);
        if (at + 1 == items.size() || item.get("ends_part").equals(true)) {
            return 0;
        }
        boolean sameRange = item.get("range").equals(items.get(at + 1).get("range"));
        return item.get("prepares").equals(true)
                ? 6
                : sameRange ? 3 : item.get("shaping").equals(true) ? 2 : 1;
    }

    @Test
    void aTeacherReadsLessonsMinutesAndWhatIsNew() {
        CommandRun run = CommandRun.of("plan", LIGHTHOUSE);
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().startsWith("Harbour light: "), run.out());
        assertTrue(run.out().contains("Lesson 1: Tower 1-"), run.out());
        assertTrue(run.out().contains("new: double crochet, magic ring"), run.out());
        assertTrue(run.out().contains(" of 90 minutes: 15 fixed, "), run.out());
        assertTrue(run.out().contains("No split of this kind costs less: "), run.out());
    }

    @Test
    void lessonsAreWrittenIntoTheFileAndAllElseStays() throws IOException {
        String before = Files.readString(Path.of(LIGHTHOUSE));
        Path file = course(before);
        CommandRun run = CommandRun.of("plan", "--write", "--sessions=7", file.toString());
        assertEquals(0, run.status(), run.err());
        String after = Files.readString(file);
        int lessons = before.indexOf("## Lesson 1");
        assertEquals(before.substring(0, lessons), after.substring(0, lessons));
        assertTrue(after.contains("## Lesson 7:") && !after.contains("## Lesson 8:"), after);
        CommandRun check = CommandRun.of("plan", "--sessions=7", "--json", file.toString());
        assertEquals(
                ReadJson.object(check.out()).get("lessons"),
                json("--sessions=7", LIGHTHOUSE).get("lessons"));
        assertEquals(List.of("course.md"), List.of(folder.toFile().list()));
    }

    @Test
    void aFileThatIsNotUtf8IsLeftAlone() throws IOException {
        byte[] bytes = "# Möwe\n\n## Part: Body\n\n- Rnd 1: 6 dc in magic ring. (6)\n"
                .getBytes(Charset.forName("windows-1252"));
        Path file = Files.write(folder.resolve("course.md"), bytes);
        CommandRun run = CommandRun.of("plan", "--write", file.toString());
        assertEquals(1, run.status());
        assertTrue(run.err().contains("UTF-8"), run.err());
        assertEquals(
                new String(bytes, StandardCharsets.ISO_8859_1), Files.readString(file, StandardCharsets.ISO_8859_1));
    }

    @Test
    void aRoundThatCannotBeReadIsPlannedAroundAndSaid() throws IOException {
        Path file = course(
                "# Gull\n\n## Part: Body\n\n- Rnd 1: 6 dc in magic ring. (6)\n- Rnd 2: dc wibble the zorp (12)\n");
        CommandRun run = CommandRun.of("plan", file.toString());
        assertTrue(run.out().contains("Body 1-2"), run.out());
        assertTrue(run.out().contains("wibble"), run.out());
        assertFalse(run.err().contains("Exception"), run.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--sessions 0 lessons/window-pot.md | 2 | at least 1",
                "--minutes -5 lessons/window-pot.md | 2 | at least 1",
                "--minutes nan lessons/window-pot.md | 2 | --minutes",
                "--pace 0 lessons/window-pot.md | 2 | above 0",
                "--pace many lessons/window-pot.md | 2 | --pace",
                "--most-new -1 lessons/window-pot.md | 2 | at least 0",
                "--homework -1 lessons/window-pot.md | 2 | at least 0",
                "--sessions 999 lessons/window-pot.md | 1 | Ask for at most",
                "--write - | 2 | standard input",
                "lessons/no-such-course.md | 3 | no such file",
                "lessons | 3 | folder",
                "- | 1 | no rounds"
            })
    void whatCannotBeDoneIsSaid(String arguments, int status, String words) {
        CommandRun run = CommandRun.of(("plan " + arguments.strip()).split(" "));
        assertEquals(status, run.status(), run.err());
        assertTrue(run.err().contains(words.strip()), run.err());
        assertEquals("", run.out());
    }

    @Test
    void sessionsTooShortForAnItemAreSaid() {
        CommandRun run = CommandRun.of("plan", "--minutes=50", "lessons/window-pot.md");
        assertEquals(0, run.status());
        assertTrue(run.out().contains("by itself") && run.out().contains("Make the session"), run.out());
        CommandRun shorter = CommandRun.of("plan", "--minutes=20", "lessons/window-pot.md");
        assertTrue(shorter.out().contains("Make sessions longer"), shorter.out());
    }
}
