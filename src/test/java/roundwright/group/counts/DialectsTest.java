package roundwright.group.counts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import roundwright.group.Expectations;
import roundwright.group.TrialCourse;

/** The same counts, written in every way that people and programs write tables, are the same counts. */
class DialectsTest {
    private static final List<String> NAMES = List.of("Inés", "Bram", "Zoë O'Neill", "Jean-Luc", "Søren", "Marta K.");
    private static final Roll ROLL = new Roll(Expectations.of(TrialCourse.TOWER.pattern()), NAMES);
    private static final List<Charset> LETTERS = List.of(
            StandardCharsets.UTF_8,
            StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16BE,
            Charset.forName("windows-1252"));
    private static final int RUNS = 500;

    /** A count to be written. */
    private record Said(String student, String part, int round, int count) {}

    /** How one file is written. */
    private static final class Dialect {
        private final Random chance;
        private final char separator;
        private final boolean allQuoted;
        private final String lineEnd;
        private final boolean decimals;

        Dialect(Random chance) {
            this.chance = chance;
            this.separator = ",;\t|".charAt(chance.nextInt(4));
            this.allQuoted = chance.nextInt(4) == 0;
            this.lineEnd = chance.nextBoolean() ? "\r\n" : "\n";
            this.decimals = chance.nextInt(4) == 0;
        }

        <T> T one(List<T> of) {
            return of.get(chance.nextInt(of.size()));
        }

        String row(List<String> cells) {
            return cells.stream().map(this::cell).collect(Collectors.joining(String.valueOf(separator))) + lineEnd;
        }

        private String cell(String words) {
            boolean needed = words.indexOf(separator) >= 0 || words.contains("\n") || words.contains("\"");
            return allQuoted || needed ? '"' + words.replace("\"", "\"\"") + '"' : words;
        }

        String number(int number) {
            return decimals ? number + (separator == ',' ? ".0" : ",00") : Integer.toString(number);
        }

        String round(int round) {
            return one(List.of("", "R", "Rnd ", "Round ", "rd. ", "#")) + round;
        }

        byte[] bytes(String text) {
            Charset letters = one(LETTERS);
            boolean unicode = !letters.name().startsWith("windows");
            boolean marked = unicode && chance.nextBoolean();
            return ((marked ? "\uFEFF" : "") + text).getBytes(letters);
        }
    }

    private static List<Said> invented(Random chance) {
        List<Said> said = new ArrayList<>();
        for (String name : NAMES) {
            for (int round = 1; round <= 3; round++) {
                if (chance.nextInt(4) > 0) {
                    said.add(new Said(
                            name, chance.nextBoolean() ? "Tower" : "Lid", round, 6 * round + chance.nextInt(3)));
                }
            }
        }
        return said;
    }

    private static String rowByRow(List<Said> all, Dialect dialect) {
        List<String> heads = List.of(
                dialect.one(List.of("student", "Name", "Who", "First name")),
                dialect.one(List.of("note", "Remarks", "Comment")),
                dialect.one(List.of("part", "Piece", "Section")),
                dialect.one(List.of("Round", "Rnd", "Round no.")),
                dialect.one(List.of("count", "Stitches", "Sts", "Stitch count")));
        StringBuilder text = new StringBuilder();
        if (dialect.chance.nextInt(4) == 0) {
            text.append(dialect.row(List.of("Tuesday group", "", "", "", ""))).append(dialect.lineEnd);
        }
        text.append(dialect.row(heads));
        for (Said said : all) {
            String note = dialect.one(List.of("", "first\nsecond", "a " + dialect.separator + " b", "say \"so\""));
            text.append(dialect.row(List.of(
                    said.student(), note, said.part(), dialect.round(said.round()), dialect.number(said.count()))));
        }
        return text.toString();
    }

    private static String roundByColumn(List<Said> all, Dialect dialect) {
        List<String> heads = new ArrayList<>(List.of(dialect.one(List.of("Student", "", "Name"))));
        String form = dialect.one(List.of("%s %d", "%s R%d", "%s, round %d", "%s: %d"));
        for (String part : List.of("Tower", "Lid")) {
            for (int round = 1; round <= 3; round++) {
                heads.add(String.format(form, part, round));
            }
        }
        StringBuilder text = new StringBuilder(dialect.row(heads));
        for (String name : NAMES) {
            List<String> cells = new ArrayList<>(List.of(name));
            for (String part : List.of("Tower", "Lid")) {
                for (int round = 1; round <= 3; round++) {
                    int number = round;
                    cells.add(all.stream()
                            .filter(said ->
                                    said.student().equals(name) && said.part().equals(part) && said.round() == number)
                            .findFirst()
                            .map(said -> dialect.number(said.count()))
                            .orElse(""));
                }
            }
            text.append(dialect.row(cells));
        }
        return text.toString();
    }

    private static List<String> read(Table table) {
        CountsReader.Result result = CountsReader.read(table, ColumnMatch.guess(table, ROLL), ROLL);
        assertEquals(List.of(), result.troubles());
        return result.rows().stream()
                .map(row -> new Said(
                                row.student(),
                                row.place().part(),
                                row.place().round(),
                                row.count().orElse(-1))
                        .toString())
                .sorted()
                .toList();
    }

    @Test
    void aTableIsTheSameInEveryDialect() throws NotATable {
        for (int run = 0; run < RUNS; run++) {
            long seed = Long.getLong("seed", 100) + run;
            Random chance = new Random(seed);
            List<Said> all = invented(chance);
            Dialect dialect = new Dialect(chance);
            String text = run % 2 == 0 ? rowByRow(all, dialect) : roundByColumn(all, dialect);
            Table table = TableFile.read(dialect.bytes(text)).get(0);
            try {
                assertEquals(all.stream().map(Said::toString).sorted().toList(), read(table));
            } catch (AssertionError wrong) {
                throw new AssertionError("seed " + seed + "\n" + text, wrong);
            }
        }
    }

    @Test
    void aSpreadsheetSaysTheSameAsItsText() throws NotATable, IOException {
        for (int run = 0; run < 40; run++) {
            Random chance = new Random(run);
            List<Said> all = invented(chance);
            Table text = Table.of(roundByColumn(all, new Dialect(chance)));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (Workbook workbook = new Workbook(bytes, "Trial", "1.0")) {
                Worksheet sheet = workbook.newWorksheet("Counts");
                for (Table.Row row : text.rows()) {
                    for (int column = 0; column < row.cells().size(); column++) {
                        put(sheet, row.line() - 1, column, row.cell(column));
                    }
                }
            }
            assertEquals(read(text), read(TableFile.read(bytes.toByteArray()).get(0)), "run " + run);
        }
    }

    private static void put(Worksheet sheet, int row, int column, String cell) {
        if (cell.matches("\\d+")) {
            sheet.value(row, column, Integer.valueOf(cell));
        } else if (!cell.isEmpty()) {
            sheet.value(row, column, cell);
        }
    }
}
