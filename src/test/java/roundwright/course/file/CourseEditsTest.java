package roundwright.course.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.course.file.CourseTexts.CourseText;

class CourseEditsTest {
    private static final String COURSE = """
            # Bell

            - terms: UK
            - yarn: aran
            - pace: 6

            ## Part: Bell

            By hand.

            - Rnd 1: 6 dc in magic ring (6)
            - Rnd 2: inc x 6 (12)
            * Change to red.

            ## Lesson 1: Ring

            Not read.

            - rounds: Bell 1
            - odd: kept
            - bring: hook
            - bring: yarn

            ## Lesson 2: Out

            - rounds: Bell 2
            """;

    record Case(String name, Function<CourseEdits, CourseDocument> edit, String was, String is) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Case> cases() {
        return List.of(
                new Case("rename", edits -> edits.rename("Little bell"), "# Bell\n", "# Little bell\n"),
                new Case(
                        "setting",
                        edits -> edits.setting("pace", Optional.of("8 a minute")),
                        "pace: 6",
                        "pace: 8 a minute"),
                new Case("same setting", edits -> edits.setting("pace", Optional.of("6")), "", ""),
                new Case(
                        "new setting",
                        edits -> edits.setting("hook", Optional.of("4 mm")),
                        "- yarn",
                        "- hook: 4 mm\n- yarn"),
                new Case(
                        "last setting",
                        edits -> edits.setting("note", Optional.of("x")),
                        "pace: 6\n",
                        "pace: 6\n- note: x\n"),
                new Case("no setting", edits -> edits.setting("yarn", Optional.empty()), "- yarn: aran\n", ""),
                new Case(
                        "line",
                        edits -> edits.line("Bell", 2, "Rnd 2: 2 dc in each st (12)"),
                        "inc x 6 (12)",
                        "2 dc in each st (12)"),
                new Case("line like a list", edits -> edits.line("Bell", 2, "2. inc x 6 (12)"), "Rnd 2: inc", "2. inc"),
                new Case(
                        "line like a bullet",
                        edits -> edits.line("Bell", 2, "* dc, rep *"),
                        "Rnd 2: inc x 6 (12)",
                        "* dc, rep *"),
                new Case("line like a rule", edits -> edits.line("Bell", 2, "- -"), "Rnd 2: inc x 6 (12)", "\\- -"),
                new Case(
                        "line like a heading",
                        edits -> edits.line("Bell", 0, "# not a name"),
                        "By hand.",
                        "\\# not a name"),
                new Case("line of a paragraph like a list", edits -> edits.line("Bell", 0, "- x"), "By hand.", "\\- x"),
                new Case(
                        "line with a backslash",
                        edits -> edits.line("Bell", 2, "a\\*b"),
                        "Rnd 2: inc x 6 (12)",
                        "a\\\\*b"),
                new Case(
                        "line with a line end",
                        edits -> edits.line("Bell", 2, "a\n\n# b"),
                        "Rnd 2: inc x 6 (12)",
                        "a # b"),
                new Case(
                        "insert line",
                        edits -> edits.insertLine("Bell", 2, "Breathe."),
                        "- Rnd 2",
                        "- Breathe.\n- Rnd 2"),
                new Case(
                        "insert last line",
                        edits -> edits.insertLine("Bell", 4, "End."),
                        "* Change to red.\n",
                        "* Change to red.\n* End.\n"),
                new Case(
                        "insert first line",
                        edits -> edits.insertLine("Bell", 0, "First."),
                        "By hand.",
                        "First.\nBy hand."),
                new Case("remove line", edits -> edits.removeLine("Bell", 1), "- Rnd 1: 6 dc in magic ring (6)\n", ""),
                new Case(
                        "lesson item",
                        edits -> edits.lessonItem(1, "rounds", List.of("Bell 1-2")),
                        "rounds: Bell 1\n",
                        "rounds: Bell 1-2\n"),
                new Case("fewer items", edits -> edits.lessonItem(1, "bring", List.of("hook")), "- bring: yarn\n", ""),
                new Case(
                        "more items",
                        edits -> edits.lessonItem(1, "bring", List.of("hook", "yarn", "tea")),
                        "bring: yarn\n",
                        "bring: yarn\n- bring: tea\n"),
                new Case(
                        "new item",
                        edits -> edits.lessonItem(1, "new", List.of("chain")),
                        "rounds: Bell 1\n",
                        "rounds: Bell 1\n- new: chain\n"),
                new Case(
                        "remove lesson", edits -> edits.removeLesson(2), "## Lesson 2: Out\n\n- rounds: Bell 2\n", ""));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void changesNothingElse(Case edit) {
        String wanted = edit.was().isEmpty() ? COURSE : COURSE.replace(edit.was(), edit.is());
        assertEquals(wanted, edit.edit().apply(edits(COURSE)).text());
        String windows = COURSE.replace("\n", "\r\n");
        assertEquals(
                wanted.replace("\n", "\r\n"), edit.edit().apply(edits(windows)).text());
    }

    private static CourseEdits edits(String text) {
        return CourseEdits.of(CourseFile.read(text));
    }

    @Test
    void aPartIsRenamedWhereLessonsNameIt() {
        String renamed = edits(COURSE).renamePart("Bell", "Dome").text();
        assertEquals(COURSE.replace("## Part: Bell", "## Part: Dome").replace("rounds: Bell", "rounds: Dome"), renamed);
    }

    @Test
    void aLessonPutInMovesTheNumbersOn() {
        Lesson lesson = new Lesson(
                9,
                "Between",
                List.of(new RoundRange("Bell", 2, 2)),
                List.of(),
                List.of("increase"),
                Optional.of(75),
                List.of(new Lesson.Entry("note", "slow")));
        String text = edits(COURSE).insertLesson(2, lesson).text();
        assertEquals(COURSE.replace("## Lesson 2: Out", """
                        ## Lesson 2: Between

                        - rounds: Bell 2
                        - new: increase
                        - minutes: 75
                        - note: slow

                        ## Lesson 3: Out"""), text);
        assertEquals(
                lesson.numbered(2), CourseFile.read(text).course().lessons().get(1));
        assertEquals(COURSE, edits(text).removeLesson(2).text());
    }

    @Test
    void aCourseIsBuiltFromNothing() {
        CourseDocument named = edits("").rename("New");
        CourseDocument set = CourseEdits.of(CourseFile.read(named)).setting("terms", Optional.of("UK"));
        CourseDocument part =
                CourseEdits.of(CourseFile.read(set)).addPart("Ball", List.of("Rnd 1: 6 dc in magic ring (6)", "- -"));
        assertEquals(
                List.of("Rnd 1: 6 dc in magic ring (6)", "- -"),
                CourseFile.read(part).parts().get(0).lines().stream()
                        .map(Written::text)
                        .toList());
        CourseDocument lesson = CourseEdits.of(CourseFile.read(part))
                .insertLesson(1, new Lesson(1, "One", List.of(), List.of(), List.of(), Optional.empty(), List.of()));
        assertEquals("New", CourseFile.read(lesson).course().name());
        assertEquals(1, CourseFile.read(lesson).course().lessons().size());
        assertTrue(lesson.text().startsWith("# New\n\n- terms: UK\n"), lesson.text());
    }

    static List<CourseText> samples() {
        return CourseTexts.samples();
    }

    private static final String[] LINES = {
        "Rnd 9: dc in each st around (18)",
        "* dc, inc; rep from * around",
        "12. dec x 6 (6)",
        "# no",
        "---",
        "===",
        "> a",
        "```",
        "<!-- a",
        "1) x",
        "[a]: b",
        "Stuff.",
        "\\",
        "a\\b",
        "- - -",
        "+",
        "~~~",
        "    x"
    };

    /** An edit and its undoing give the bytes that were there; in between the file says what was asked for and all else as before. */
    @ParameterizedTest
    @MethodSource("samples")
    void anyEditCanBeReadAndTakenBack(CourseText sample) {
        long seed = Long.getLong("seed", 77L);
        Random random = new Random(seed);
        for (int run = 0; run < 60; run++) {
            String text = variant(sample.text(), random.nextInt(4));
            CourseFile file = CourseFile.read(text);
            PartPlace part = file.parts().get(random.nextInt(file.parts().size()));
            int index = random.nextInt(part.lines().size());
            String line = LINES[random.nextInt(LINES.length)];
            List<String> lines =
                    new ArrayList<>(part.lines().stream().map(Written::text).toList());
            String old = lines.get(index);
            String where = sample + ", seed " + seed + ", run " + run + ": " + part.name() + " " + index + " " + line;

            lines.set(index, line.strip());
            CourseFile changed = CourseFile.read(CourseEdits.of(file).line(part.name(), index, line));
            assertEquals(lines, lines(changed, part.name()), where);
            assertEquals(others(file, part.name()), others(changed, part.name()), where);
            assertEquals(
                    text, CourseEdits.of(changed).line(part.name(), index, old).text(), where);

            lines.add(index, old);
            lines.set(index + 1, line.strip());
            CourseFile inserted = CourseFile.read(CourseEdits.of(changed).insertLine(part.name(), index, old));
            assertEquals(lines, lines(inserted, part.name()), where);
            assertEquals(others(file, part.name()), others(inserted, part.name()), where);
            assertEquals(
                    changed.text(),
                    CourseEdits.of(inserted).removeLine(part.name(), index).text(),
                    where);
        }
    }

    private static List<String> lines(CourseFile file, String part) {
        return file.part(part).orElseThrow().lines().stream().map(Written::text).toList();
    }

    private static List<Object> others(CourseFile file, String part) {
        List<Object> others = new ArrayList<>(Arrays.asList(
                file.course().name(),
                file.course().settings(),
                file.course().lessons().stream().map(Lesson::words).toList()));
        file.parts().stream()
                .filter(place -> !place.name().equals(part))
                .forEach(place -> others.add(lines(file, place.name())));
        return others;
    }

    @ParameterizedTest
    @MethodSource("samples")
    void lessonsWrittenAsTheyAreChangeNothing(CourseText sample) {
        CourseFile file = CourseFile.read(sample.text());
        assertEquals(
                sample.text(),
                CourseEdits.of(file).lessons(file.course().lessons()).text());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void lessonsWrittenAnewAreReadAsTheyWereMeant(CourseText sample) {
        Random random = new Random(5);
        for (int run = 0; run < 20; run++) {
            CourseFile file = CourseFile.read(sample.text());
            List<Lesson> lessons = new ArrayList<>(file.course().lessons());
            java.util.Collections.shuffle(lessons, random);
            lessons = new ArrayList<>(lessons.subList(0, 1 + random.nextInt(lessons.size())));
            lessons.addAll(lessons.subList(0, random.nextInt(lessons.size())));
            for (int index = 0; index < lessons.size(); index++) {
                lessons.set(index, lessons.get(index).numbered(index + 1));
            }
            CourseFile written = CourseFile.read(CourseEdits.of(file).lessons(lessons));
            assertEquals(lessons, written.course().lessons());
            assertEquals(
                    lines(file, file.parts().get(0).name()),
                    lines(written, file.parts().get(0).name()));
        }
    }

    /** As it is, with the line ends of another system, without the last line end, with a byte order mark. */
    private static String variant(String text, int number) {
        return switch (number) {
            case 0 -> text;
            case 1 -> text.replace("\n", "\r\n");
            case 2 -> text.strip();
            default -> "\uFEFF" + text;
        };
    }

    private static final String[] VALUES = {
        "a", "Tower: 1", "x, y; z", "# a", "- a", "1. a", "`a`", "*a*", "\\", "a\\, b", "äöü ▲", "a: b: c"
    };

    @ParameterizedTest
    @MethodSource("samples")
    void anyItemOfALessonCanBeChangedAndTakenBack(CourseText sample) {
        long seed = Long.getLong("seed", 4711L);
        Random random = new Random(seed);
        for (int run = 0; run < 60; run++) {
            String text = variant(sample.text(), run % 4);
            CourseFile file = CourseFile.read(text);
            int number = 1 + random.nextInt(file.course().lessons().size());
            String key =
                    List.of("bring", "recap", "homework", "caution", "note").get(random.nextInt(5));
            List<String> before = file.course().lessons().get(number - 1).words(key);
            List<String> after = random.ints(random.nextInt(4), 0, VALUES.length)
                    .mapToObj(index -> VALUES[index])
                    .toList();
            String where = sample + ", seed " + seed + ", run " + run + ": lesson " + number + " " + key + " " + after;

            CourseFile changed = CourseFile.read(CourseEdits.of(file).lessonItem(number, key, after));
            assertEquals(after, changed.course().lessons().get(number - 1).words(key), where);
            assertEquals(
                    file.course().lessons().size(), changed.course().lessons().size(), where);
            CourseFile back = CourseFile.read(CourseEdits.of(changed).lessonItem(number, key, before));
            assertEquals(file.course().lessons(), back.course().lessons(), where);
            if (!before.isEmpty() && !after.isEmpty() || before.equals(after)) {
                assertEquals(text.stripTrailing(), back.text().stripTrailing(), where);
            }
        }
    }
}
