package roundwright.fuzz;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import roundwright.course.file.CourseFile;
import roundwright.group.CountReport;
import roundwright.group.Expectations;
import roundwright.group.StudentId;
import roundwright.group.counts.ColumnMatch;
import roundwright.group.counts.CountsReader;
import roundwright.group.counts.CountsTables;
import roundwright.group.counts.NotATable;
import roundwright.group.counts.OutTable;
import roundwright.group.counts.Roll;
import roundwright.group.counts.Table;
import roundwright.group.counts.TableFile;
import roundwright.group.counts.TableWriter;

/** Tables of counts, as text and as spreadsheets: what the program writes holds no formula, and whatever it reads is answered. */
final class TablesDoor implements Door {
    private static final String FORMULA = "=+-@\t\r";

    private final Expectations expectations;

    TablesDoor() throws IOException {
        String course = Files.readString(Path.of("lessons/harbour-light.md"));
        expectations = Expectations.of(CourseFile.read(course).course().pattern());
    }

    @Override
    public String name() {
        return "tables";
    }

    @Override
    public void once(Random chance, Path folder) throws IOException {
        Spoiler spoiler = new Spoiler(chance);
        Map<StudentId, String> names = new HashMap<>();
        List<CountReport> reports = new ArrayList<>();
        for (int student = 1; student <= 1 + chance.nextInt(4); student++) {
            names.put(new StudentId(student), spoiler.name());
            for (int round = 1; round <= chance.nextInt(8); round++) {
                reports.add(report(reports.size() + 1, student, round, chance, spoiler));
            }
        }
        OutTable table = CountsTables.reports(reports, names::get, ZoneOffset.UTC);
        byte[] text = TableWriter.csv(table);
        byte[] spreadsheet = TableWriter.spreadsheet(List.of(table));
        noFormula(text);
        noFormulaElement(Files.write(folder.resolve("good.xlsx"), spreadsheet));
        byte[] good = chance.nextBoolean() ? text : spreadsheet;
        byte[] spoilt = good == text && chance.nextBoolean()
                ? spoiler.encoded(spoiler.text(new String(text, StandardCharsets.UTF_8)))
                : spoiler.bytes(good);
        read(Files.readAllBytes(Files.write(folder.resolve("table"), spoilt)), new ArrayList<>(names.values()));
    }

    private static CountReport report(long id, int student, int round, Random chance, Spoiler spoiler) {
        return new CountReport(
                id,
                new StudentId(student),
                chance.nextInt(4) == 0 ? spoiler.name() : "Tower",
                round,
                CountReport.Kind.COUNTED,
                OptionalInt.of(chance.nextInt(99)),
                Instant.parse("2026-02-03T19:00:00Z"),
                chance.nextInt(3) == 0 ? spoiler.name() : "");
    }

    private void read(byte[] file, List<String> names) {
        try {
            Roll roll = new Roll(expectations, names);
            for (Table table : TableFile.read(file)) {
                CountsReader.read(table, ColumnMatch.guess(table, roll), roll)
                        .troubles()
                        .forEach(trouble -> Saying.sentence(trouble.toString().replace("CellTrouble", "")));
            }
        } catch (NotATable refused) {
            Saying.sentence(refused.getMessage());
        }
    }

    private static void noFormula(byte[] text) throws IOException {
        String plain = new String(text, StandardCharsets.UTF_8).replace("\uFEFF", "");
        for (CSVRecord row : CSVFormat.DEFAULT.parse(new StringReader(plain))) {
            for (String cell : row) {
                if (!cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0) {
                    throw new AssertionError("a formula: " + cell);
                }
            }
        }
    }

    private static void noFormulaElement(Path spreadsheet) throws IOException {
        try (ZipFile zip = new ZipFile(spreadsheet.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                String text = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
                if (entry.getName().contains("worksheets/") && (text.contains("<f>") || text.contains("<f "))) {
                    throw new AssertionError("a formula in " + entry.getName());
                }
            }
        }
    }
}
