package roundwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MistakesCommandTest {
    private static final String COURSE = """
            # Bell

            - terms: UK
            - pace: 6 stitches a minute

            ## Part: Bell

            - Rnd 1: 6 dc in magic ring (6)
            - Rnd 2: inc x 6 (12)
            - Rnd 3: (dc, inc) x 6 (18)
            - Rnd 4: dc in each st around (18)
            - Rnd 5: dc in each st around (18)
            - Rnd 6: (dc, dec) x 6 (12)
            """;

    @TempDir
    Path folder;

    private Path course;

    @BeforeEach
    void writeCourse() throws IOException {
        course = Files.writeString(folder.resolve("bell.md"), COURSE);
    }

    private CommandRun run(String counts, String... options) {
        String[] arguments = new String[options.length + 3];
        arguments[0] = "mistakes";
        System.arraycopy(options, 0, arguments, 1, options.length);
        arguments[options.length + 1] = course.toString();
        arguments[options.length + 2] = "-";
        return CommandRun.withInput(counts, arguments);
    }

    @Test
    void whatIsOffIsExplainedInSentencesWithACheckAndAdvice() {
        CommandRun run = run("student,part,round,count\nIda,Bell,1,6\nIda,Bell,2,12\nIda,Bell,3,18\nIda,Bell,4,19\n");
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(
                run.out().contains("Ida, Bell, round 4: 19, not 18. One stitch was probably worked twice"), run.out());
        assertTrue(run.out().contains("Rnd 5: 8 dc, dec, 9 dc (18)"), run.out());
        assertTrue(run.out().contains("4 counts: 3 right, 1 off, 0 to count again."), run.out());
        assertFalse(run.out().contains("worked-twice"));
    }

    @Test
    void everyReportIsOneJsonObjectInTheOrderOfTheFile() throws IOException {
        CommandRun run = run(
                "student,part,round,count\nIda,Bell,1,6\nBo,Bell,1,5\nIda,Bell,2,12\nBo,Bell,2,10\nIda,Bell,3,\n",
                "--json",
                "--rates",
                "story");
        List<String> lines = run.out().lines().toList();
        assertEquals(4, lines.size());
        for (String line : lines) {
            parse(line);
        }
        assertTrue(lines.get(0)
                .startsWith("{\"student\":\"Ida\",\"part\":\"Bell\",\"round\":1,\"reported\":6,\"expected\":6,"));
        assertTrue(lines.get(3).contains("\"state\":\"off\""), lines.get(3));
        assertTrue(lines.get(3).contains("\"began\":{\"part\":\"Bell\",\"round\":1,"), lines.get(3));
    }

    private static void parse(String json) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            JsonToken last = null;
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                last = token;
            }
            assertEquals(JsonToken.END_OBJECT, last, json);
        }
    }

    @Test
    void learnedRatesAreTheDefaultAndDifferFromTheStorys() {
        String counts = "student,part,round,count\nIda,Bell,1,6\nIda,Bell,2,11\nIda,Bell,3,15\nIda,Bell,4,15\n";
        assertFalse(run(counts, "--json")
                .out()
                .equals(run(counts, "--json", "--rates", "story").out()));
        assertEquals(ExitStatus.WRONG_USAGE, run(counts, "--rates", "guessed").status());
    }

    private record BadRow(String row, String says) {
        @Override
        public String toString() {
            return row;
        }
    }

    private static List<BadRow> badRows() {
        return List.of(
                new BadRow("Ida,Bell,3,-4", "3:4: A count cannot be -4."),
                new BadRow("Ida,Bell,3,fifteen", "3:4: The count \"fifteen\" is not a whole number."),
                new BadRow("Ida,Bell,3,1800", "3:4: A count of 1800 cannot be meant"),
                new BadRow("Ida,Bell,30,18", "3:3: Bell has no round 30; its rounds are 1 to 6."),
                new BadRow("Ida,Bell,two,18", "3:3: The round \"two\" is not a whole number."),
                new BadRow("Ida,Handle,3,18", "3:2: The pattern has no part \"Handle\""),
                new BadRow(",Bell,3,18", "3:1: Nobody is named."),
                new BadRow("Ida,Bell,1,6", "3:3: Ida has a count for Bell round 1 already, in line 2."),
                new BadRow("Ida", "3:3: The round \"\" is not a whole number."),
                new BadRow("\"Ida\"x,\"Bell\" y,3,18", "3:2: The pattern has no part \"Bell y\""),
                new BadRow("Ida,Bell,99999999999,18", "3:3: The round \"99999999999\" is not a whole number."));
    }

    @ParameterizedTest
    @MethodSource("badRows")
    void aBadRowIsReportedWithItsPlaceAndTheRestIsUsed(BadRow bad) {
        CommandRun run = run("student,part,round,count\nIda,Bell,1,6\n" + bad.row() + "\nIda,Bell,2,12\n", "--json");
        assertEquals(ExitStatus.INPUT_HAS_ERRORS, run.status());
        assertTrue(run.err().contains(bad.says()), run.err());
        assertEquals(2, run.out().lines().count());
    }

    @Test
    void aRoundThatWasPulledBackMayBeReportedAgain() {
        CommandRun run = run(
                "student,part,round,count,pulled_back\nIda,Bell,1,6,\nIda,Bell,2,12,\nIda,Bell,3,16,\nIda,Bell,2,12,yes\nIda,Bell,3,18,no\n",
                "--json",
                "--rates",
                "story");
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        List<String> lines = run.out().lines().toList();
        assertEquals(5, lines.size());
        assertTrue(lines.get(4).contains("\"state\":\"right\",\"explanations\":[{\"kinds\":[],\"probability\":0.9"));
    }

    @Test
    void answersToChecksMoveTheExplanation() {
        String start = "student,part,round,count,checks\nIda,Bell,1,6,\nIda,Bell,2,12,\nIda,Bell,3,18,\n";
        CommandRun gap = run(start + "Ida,Bell,4,17,look-for-a-gap=yes;recount=same\n", "--json", "--rates", "story");
        CommandRun none =
                run(start + "Ida,Bell,4,17,look-for-a-gap=no;recount=different\n", "--json", "--rates", "story");
        assertTrue(last(gap).contains("\"explanations\":[{\"kinds\":[\"skipped\"]"), last(gap));
        assertTrue(last(none).contains("\"explanations\":[{\"kinds\":[\"miscounted\"]"), last(none));
        CommandRun unknown = run(start + "Ida,Bell,4,17,look-for-a-gap=perhaps\n", "--json");
        assertTrue(unknown.err().contains("look-for-a-gap=perhaps"), unknown.err());
        assertEquals(4, unknown.out().lines().count());
    }

    private static String last(CommandRun run) {
        return run.out().lines().reduce((first, second) -> second).orElse("");
    }

    @Test
    void semicolonsTabsAByteOrderMarkAndMoreColumnsAreNoTrouble() {
        String[] tables = {
            "student;part;round;count\nIda;Bell;1;6\n",
            "student\tpart\tround\tcount\nIda\tBell\t1\t6\n",
            "\uFEFFstudent,part,round,count\nIda,Bell,1,6\n",
            "Round,Count,Student,Part,date,colour\n1,6,Ida,Bell,2026-02-03,red\n",
            "student,part,round,count\r\n\"Ida\",\"Bell\",1,6\r\n\r\n"
        };
        for (String table : tables) {
            CommandRun run = run(table, "--json");
            assertEquals(ExitStatus.FINE, run.status(), table + run.err());
            assertEquals(1, run.out().lines().count(), table);
        }
    }

    @Test
    void aSpreadsheetAndATableInOldLettersAreReadLikeAnyOther() throws IOException {
        Path spreadsheet = folder.resolve("counts.xlsx");
        try (org.dhatim.fastexcel.Workbook workbook =
                new org.dhatim.fastexcel.Workbook(Files.newOutputStream(spreadsheet), "Trial", "1.0")) {
            org.dhatim.fastexcel.Worksheet sheet = workbook.newWorksheet("Counts");
            List<String> heads = List.of("student", "part", "round", "count");
            for (int column = 0; column < heads.size(); column++) {
                sheet.value(0, column, heads.get(column));
            }
            sheet.value(1, 0, "Zoë");
            sheet.value(1, 1, "Bell");
            sheet.value(1, 2, 1);
            sheet.value(1, 3, 6);
        }
        Path old = Files.write(
                folder.resolve("old.csv"),
                "student;part;round;count\nZoë;Bell;1;6\n".getBytes(java.nio.charset.Charset.forName("windows-1252")));
        for (Path file : List.of(spreadsheet, old)) {
            CommandRun run = CommandRun.of("mistakes", "--json", course.toString(), file.toString());
            assertEquals(ExitStatus.FINE, run.status(), run.err());
            assertTrue(run.out().startsWith("{\"student\":\"Zoë\",\"part\":\"Bell\",\"round\":1,"), run.out());
        }
        Files.write(spreadsheet, new byte[] {'P', 'K', 3, 4, 0, 0});
        CommandRun broken = CommandRun.of("mistakes", course.toString(), spreadsheet.toString());
        assertEquals(ExitStatus.INPUT_HAS_ERRORS, broken.status());
        assertTrue(broken.err().contains("none that can be read"), broken.err());
    }

    @Test
    void anUnfinishedRoundIsNoCountToExplain() {
        CommandRun run = run("student,part,round,count\nIda,Bell,1,6\nIda,Bell,2,…7\nIda,Bell,2,12\n", "--json");
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertEquals(2, run.out().lines().count(), run.out());
    }

    @Test
    void whatIsNoTableIsSaidInOneSentence() {
        for (String text : List.of("", "hello", "student,part\nIda,Bell\n", "\"student,part,round,count\n")) {
            CommandRun run = run(text);
            assertEquals(ExitStatus.INPUT_HAS_ERRORS, run.status(), text);
            assertFalse(run.err().contains("Exception"), run.err());
            assertFalse(run.err().isBlank());
        }
    }
}
