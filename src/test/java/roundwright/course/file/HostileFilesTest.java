package roundwright.course.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A megabyte of anything is answered in good time, with a limited number of problems. */
class HostileFilesTest {
    private static final int MEGABYTE = 1 << 20;
    private static final String HEAD = "# A\n\n- terms: UK\n\n## Part: P\n\n- Rnd 1: 6 dc in magic ring (6)\n\n";

    record Case(String name, String text) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Case of(String name, String head, String again) {
        return new Case(name, head + again.repeat(MEGABYTE / again.length()));
    }

    static List<Case> cases() {
        return List.of(
                of("names", "", "# A\n"),
                of("parts", "", "## Part: P\n"),
                of("lessons", HEAD, "## Lesson 1: L\n"),
                of("techniques", HEAD, "## Technique: T\n- needs: T\n"),
                of("bullets", HEAD, "- "),
                of("bullets with words", HEAD, "- a "),
                of("numbers in bullets", HEAD, "- 1. "),
                of("quotations", HEAD, "> "),
                of("items", HEAD, "- x\n"),
                of("settings", "# A\n", "- hook: 4 mm\n"),
                of("unknown settings", "# A\n", "- hok: 4 mm\n"),
                of("one long name", "# ", "a"),
                of("one long key", "# A\n- ", "k"),
                of("one long value", "# A\n- tension: ", "18 "),
                of("digits", "# A\n- tension: ", "1"),
                of("one long line of the pattern", HEAD + "- ", "dc, "),
                of("references", HEAD + "## Lesson 1: L\n- rounds: ", "P 1, "),
                of("references without a comma", HEAD + "## Lesson 1: L\n- rounds: ", "P 1 and "),
                of("unknown references", HEAD + "## Lesson 1: L\n- rounds: ", "Q,"),
                of("running on", HEAD + "## Lesson 1: L\n- new: a", ",\n  a"),
                of("homework", HEAD + "## Lesson 1: L\n- homework: ", "P 1 "),
                of("backslashes", HEAD + "- ", "\\"),
                of("escapes", HEAD + "## Lesson 1: L\n- rounds: ", "\\,"),
                of("brackets", HEAD, "[a"),
                of("emphasis", HEAD, "*a **a "),
                of("fences", HEAD, "```\n"),
                of("comments", HEAD, "<!-- "),
                of("blank lines", HEAD, "\r\n"),
                of("carriage returns", HEAD, "\r"),
                of("marks", HEAD, "\uFEFF"),
                of("half pairs", HEAD, "\uD83E"),
                of("zeros", HEAD, "\0"),
                new Case("long ranges", HEAD + "- Rnds 2-999999999: dc in each st around (6)\n".repeat(3000)),
                new Case(
                        "one long range",
                        HEAD + "- Rnds 2-99999: dc in each st around (6)\n\n## Lesson 1: L\n\n- rounds: P 1-99999\n"),
                new Case("stairs", HEAD + stairs()));
    }

    private static String stairs() {
        StringBuilder stairs = new StringBuilder();
        for (int step = 0; stairs.length() < MEGABYTE; step++) {
            stairs.append(" ".repeat(2 * step)).append("- a\n");
        }
        return stairs.toString();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isAnsweredInGoodTime(Case hostile) {
        CourseFile file = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> CourseFile.read(hostile.text()));
        assertEquals(hostile.text(), file.text());
        assertTrue(
                file.problems().size() <= 1001, "as many as " + file.problems().size());
    }
}
