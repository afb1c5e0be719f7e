package roundwright.group.counts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.group.Expectations;
import roundwright.group.TrialCourse;

class CountsReaderTest {
    private static final Roll TWO_PARTS =
            new Roll(Expectations.of(TrialCourse.TOWER.pattern()), List.of("Inés", "Bram", "Zoë O'Neill", "=Max"));
    private static final Roll ONE_PART = new Roll(
            Expectations.of(
                    TrialCourse.of(TrialCourse.part("Ball", 6, 12, 18, 24)).pattern()),
            List.of("Inés", "Bram"));

    private static final Roll NUMBERED = new Roll(
            Expectations.of(TrialCourse.of(TrialCourse.part("Ball", 6, 12)).pattern()),
            List.of("Seat 1", "Seat 2", "Seat 12"));

    /**
     * @param reports {@code student part round kind count}, kinds {@code =} counted, {@code ~} unfinished, {@code <} pulled back
     * @param troubles {@code line:column} of cells that cannot be used
     */
    private record Case(String name, Roll roll, String table, String reports, String troubles) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> cases() {
        return Stream.of(
                new Case(
                        "a row a report",
                        TWO_PARTS,
                        "student,part,round,count\nInes,Tower,1,6\nBram,Lid,2,12\n",
                        "Inés Tower 1=6, Bram Lid 2=12",
                        ""),
                new Case(
                        "semicolons, other words, other order",
                        TWO_PARTS,
                        "Stitches;Name;Rnd;Piece\r\n6;Bram;1;tower\r\n13;Bram;2;Tower\r\n",
                        "Bram Tower 1=6, Bram Tower 2=13",
                        ""),
                new Case("tabs, one part", ONE_PART, "Name\tRound\tCount\nInés\tR1\t6\n", "Inés Ball 1=6", ""),
                new Case(
                        "a column a round",
                        ONE_PART,
                        "Student,R1,R2,R3,R4\nInés,6,12,18,\nBram,6,11,-,24\n",
                        "Inés Ball 1=6, Inés Ball 2=12, Inés Ball 3=18, Bram Ball 1=6, Bram Ball 2=11, Bram Ball 4=24",
                        ""),
                new Case(
                        "a column a round, with parts and no word above the names",
                        TWO_PARTS,
                        ",Tower 1,Tower 2,Lid 1\nInés,6,12,6\n",
                        "Inés Tower 1=6, Inés Tower 2=12, Inés Lid 1=6",
                        ""),
                new Case(
                        "a column a student",
                        ONE_PART,
                        "Round,Inés,Bram\n1,6,6\n2,12,13\n",
                        "Inés Ball 1=6, Bram Ball 1=6, Inés Ball 2=12, Bram Ball 2=13",
                        ""),
                new Case(
                        "a block without headings",
                        ONE_PART,
                        "Inés\t1\t6\nBram\t1\t7\n",
                        "Inés Ball 1=6, Bram Ball 1=7",
                        ""),
                new Case(
                        "words in the cells",
                        ONE_PART,
                        "name,round,count\nInés,Round 1,6 sts\nInés,Rnd 2,\"12\"\nInés,3,…9\nInés,4,\n",
                        "Inés Ball 1=6, Inés Ball 2=12, Inés Ball 3~9",
                        ""),
                new Case(
                        "pulled back",
                        ONE_PART,
                        "student,round,count,pulled_back\nInés,2,,yes\nInés,3,18,\nInés,0,,yes\n",
                        "Inés Ball 2<, Inés Ball 3=18, Inés Ball 0<",
                        ""),
                new Case(
                        "rows that cannot be used",
                        TWO_PARTS,
                        "student,part,round,count\nNobody,Tower,1,6\nBram,Hat,1,6\nBram,Tower,99,6\nBram,Tower,two,6\nBram,Tower,1,six\n"
                                + "Bram,Tower,1,-6\n,Tower,1,6\nBram,,1,6\nBram,Tower,2,12\n",
                        "Bram Tower 2=12",
                        "2:1 3:2 4:3 5:3 6:4 7:4 8:1 9:2"),
                new Case(
                        "the separator said",
                        ONE_PART,
                        "sep=;\nname;round;count\nBram;1;6\nx;1;6\n",
                        "Bram Ball 1=6",
                        "4:1"),
                new Case(
                        "blank lines count as lines",
                        ONE_PART,
                        "name,round,count\n\nBram,1,6\n\n?,1,6\n",
                        "Bram Ball 1=6",
                        "5:1"),
                new Case(
                        "a name that would be a formula",
                        TWO_PARTS,
                        "student,part,round,count\n'=Max,Tower,1,6\n=Max,Tower,2,12\n",
                        "=Max Tower 1=6, =Max Tower 2=12",
                        ""),
                new Case(
                        "titles above the headings",
                        ONE_PART,
                        "Tuesday group;;\n\nName;Round no.;Stitch count\nInés;2;12,0\n",
                        "Inés Ball 2=12",
                        ""),
                new Case(
                        "headings of other languages and in sentences",
                        ONE_PART,
                        "Vorname;Runde;Maschen;Bemerkung\nBram;3;18;gut\n",
                        "Bram Ball 3=18",
                        ""),
                new Case(
                        "parts named once above their rounds",
                        TWO_PARTS,
                        ",Tower,,Lid,\nWho,1,2,1,2\nInés,6,12,6,13\n",
                        "Inés Tower 1=6, Inés Tower 2=12, Inés Lid 1=6, Inés Lid 2=13",
                        ""),
                new Case(
                        "one number for several rounds",
                        TWO_PARTS,
                        "student,part,round,count\nBram,Tower,7-9,36\nBram,,Lid 1 to 2,=\n",
                        "Bram Tower 7=36, Bram Tower 8=36, Bram Tower 9=36, Bram Lid 1=6, Bram Lid 2=12",
                        ""),
                new Case(
                        "marks in the cells",
                        ONE_PART,
                        "Name,R1,R2,R3,R4\nInés,ok,12.0,9 so far,absent\nBram,6,✓,pulled back,…\n",
                        "Inés Ball 1=6, Inés Ball 2=12, Inés Ball 3~9, Bram Ball 1=6, Bram Ball 2=12, Bram Ball 3<, Bram Ball 4~",
                        ""),
                new Case(
                        "numbers that are no counts",
                        ONE_PART,
                        "Name,Round,Count\nInés,1,12.5\nInés,2,12.000\nInés,3,1e3\nInés,4,0x18\nInés,2,18000\nInés,2,12 or 13\n",
                        "",
                        "2:3 3:3 4:3 5:3 6:3 7:3"),
                new Case(
                        "a line break in a quoted note",
                        ONE_PART,
                        "name,note,round,count\nInés,\"first\nsecond, with \"\"marks\"\"\",1,6\n?,,1,6\n",
                        "Inés Ball 1=6",
                        "4:1"),
                new Case(
                        "bars and blanks about the cells",
                        ONE_PART,
                        " Name | Rnd | Sts \n Inés | 1 | 6 \n",
                        "Inés Ball 1=6",
                        ""),
                new Case(
                        "a quotation mark that is never closed",
                        ONE_PART,
                        "name,round,count\nInés,1,6\n\"Bram,2,12\nInés,2,12\n",
                        "Inés Ball 1=6, Bram Ball 2=12, Inés Ball 2=12",
                        "3:1"),
                new Case(
                        "students told apart by numbers",
                        NUMBERED,
                        "name,round,count\nSeat 1,1,6\nseat 12,2,12\nSeat 13,1,6\nSaet 1,2,12\n",
                        "Seat 1 Ball 1=6, Seat 12 Ball 2=12, Seat 1 Ball 2=12",
                        "4:1"),
                new Case(
                        "a comma in a quoted name",
                        TWO_PARTS,
                        "student,part,round,count\n\"Zoë O'Neill\",Tower,1,6\n",
                        "Zoë O'Neill Tower 1=6",
                        ""));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aTableSays(Case given) throws NotATable {
        CountsReader.Result result = read(Table.of(given.table()), given.roll());
        assertEquals(
                given.reports(),
                result.rows().stream().map(CountsReaderTest::line).collect(Collectors.joining(", ")));
        assertEquals(
                given.troubles(),
                result.troubles().stream()
                        .map(trouble -> trouble.line() + ":" + trouble.column())
                        .collect(Collectors.joining(" ")));
    }

    static Stream<Charset> letters() {
        return Stream.of(
                StandardCharsets.UTF_8,
                StandardCharsets.UTF_16,
                StandardCharsets.UTF_16LE,
                StandardCharsets.UTF_16BE,
                Charset.forName("windows-1252"));
    }

    @ParameterizedTest
    @MethodSource("letters")
    void lettersAreFoundOut(Charset letters) throws NotATable {
        byte[] file = "student,part,round,count\nInés,Tower,1,6\n".getBytes(letters);
        assertEquals("Inés", read(only(file), TWO_PARTS).rows().get(0).student());
    }

    @Test
    void aPersonCanSayWhatAColumnIs() throws NotATable {
        Table table = Table.of("a,b,c\nBram,1,6\n");
        ColumnMatch match = new ColumnMatch(
                1,
                List.of(
                        Column.of(Column.Kind.STUDENT),
                        Column.of(Column.Kind.ROUND),
                        Column.of(Column.Kind.PASSED_OVER)));
        assertEquals(false, match.usable());
        ColumnMatch mended = match.with(2, Column.of(Column.Kind.COUNT));
        assertEquals(1, CountsReader.read(table, mended, ONE_PART).rows().size());
    }

    @Test
    void rubbishIsReadInTimeAndThrowsNothing() {
        long seed = Long.getLong("seed", 2);
        Random chance = new Random(seed);
        for (int run = 0; run < 500; run++) {
            byte[] bytes = new byte[chance.nextInt(400)];
            chance.nextBytes(bytes);
            assertTimeoutPreemptively(Duration.ofSeconds(2), () -> read(only(bytes), TWO_PARTS), "seed " + seed);
        }
        String quotes = "student,part,round,count\n" + "\"Bram,Tower,1,6\n".repeat(20_000);
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> read(Table.of(quotes), TWO_PARTS));
        String rows = "student,part,round,count\n" + "Bram,Tower,1,6\n".repeat(100_000);
        assertTimeoutPreemptively(
                Duration.ofSeconds(10),
                () -> assertEquals(
                        100_000, read(Table.of(rows), TWO_PARTS).rows().size()));
    }

    /** The table of a file; no rows where it is refused with a sentence. */
    private static Table only(byte[] file) {
        try {
            return TableFile.read(file).get(0);
        } catch (NotATable refused) {
            assertTrue(refused.getMessage().endsWith("."), refused.getMessage());
            return new Table("", List.of(), 0);
        }
    }

    private static CountsReader.Result read(Table table, Roll roll) {
        return CountsReader.read(table, ColumnMatch.guess(table, roll), roll);
    }

    private static String line(CountRow row) {
        String kind = switch (row.kind()) {
            case COUNTED -> "=";
            case UNFINISHED -> "~";
            case PULLED_BACK -> "<";
        };
        List<String> words = new ArrayList<>(List.of(row.student(), row.place().part()));
        return String.join(" ", words) + " " + row.place().round() + kind
                + (row.count().isPresent() ? row.count().getAsInt() : "");
    }
}
