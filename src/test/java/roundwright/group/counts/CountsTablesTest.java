package roundwright.group.counts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Collectors;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.junit.jupiter.api.Test;
import roundwright.group.CountReport;
import roundwright.group.CountReport.Kind;
import roundwright.group.Expectations;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.group.TrialCourse;

class CountsTablesTest {
    private static final Expectations TOWER = Expectations.of(TrialCourse.TOWER.pattern());
    private static final Map<Long, String> NAMES =
            Map.of(1L, "Inés", 2L, "Bram", 4L, "=HYPERLINK(\"x\")", 5L, "'-Sam", 6L, "\t+1", 7L, "＝Wide");
    private static final Roll ROLL = new Roll(
                    TOWER, NAMES.values().stream().map(String::strip).toList())
            .withChecks(Map.of("recount", List.of("same", "different")));

    private static CountReport report(long sequence, long student, int round, Kind kind, int count, String note) {
        return new CountReport(
                sequence,
                new StudentId(student),
                "Tower",
                round,
                kind,
                count < 0 ? OptionalInt.empty() : OptionalInt.of(count),
                Instant.parse("2027-03-16T18:30:00Z"),
                note,
                Map.of("recount", "same"),
                Optional.empty());
    }

    private static OutTable table(List<CountReport> reports) {
        return CountsTables.reports(reports, id -> NAMES.get(id.value()), ZoneOffset.UTC);
    }

    private static List<CountRow> readBack(byte[] file) throws NotATable {
        Table table = TableFile.read(file).get(0);
        CountsReader.Result result = CountsReader.read(table, ColumnMatch.guess(table, ROLL), ROLL);
        assertEquals(List.of(), result.troubles());
        return result.rows();
    }

    private static String line(CountRow row) {
        return row.student().strip() + " " + row.place().round() + " " + row.kind() + " "
                + (row.count().isPresent() ? row.count().getAsInt() : "") + " "
                + row.note().strip();
    }

    private static String line(CountReport report) {
        return NAMES.get(report.student().value()).strip() + " " + report.round() + " " + report.kind() + " "
                + (report.count().isPresent() ? report.count().getAsInt() : "")
                + " " + report.note().strip();
    }

    @Test
    void whatIsWrittenIsReadBackFromBothForms() throws NotATable {
        List<CountReport> reports = List.of(
                report(1, 1, 3, Kind.COUNTED, 18, "=1+1"),
                report(2, 4, 4, Kind.UNFINISHED, 9, "a \"quoted\", note\nof two lines"),
                report(3, 2, 2, Kind.PULLED_BACK, -1, "@home"),
                report(4, 5, 4, Kind.UNFINISHED, -1, "'=twice"),
                report(5, 6, 1, Kind.COUNTED, 6, "-"),
                report(6, 7, 1, Kind.COUNTED, 6, "  -lead"),
                report(7, 2, 3, Kind.COUNTED, 17, "").withdrawn(Optional.of(Instant.EPOCH)));
        String said = reports.stream()
                .filter(CountReport::stands)
                .map(CountsTablesTest::line)
                .collect(Collectors.joining("\n"));
        for (byte[] file : List.of(TableWriter.csv(table(reports)), TableWriter.spreadsheet(List.of(table(reports))))) {
            List<CountRow> rows = readBack(file);
            assertEquals(said, rows.stream().map(CountsTablesTest::line).collect(Collectors.joining("\n")));
            assertEquals(
                    Optional.of(LocalDateTime.of(2027, 3, 16, 18, 30)),
                    rows.get(0).said());
            assertEquals(Map.of("recount", "same"), rows.get(0).checks());
        }
    }

    @Test
    void noCellOfATextBeginsLikeAFormula() throws NotATable {
        List<CountReport> reports = new ArrayList<>();
        NAMES.keySet().forEach(id -> reports.add(report(reports.size() + 1, id, 1, Kind.COUNTED, 6, NAMES.get(id))));
        String text = new String(TableWriter.csv(table(reports)), StandardCharsets.UTF_8);
        assertTrue(text.startsWith("\uFEFFstudent,"));
        assertTrue(
                Table.of(text.substring(1)).rows().stream()
                        .flatMap(row -> row.cells().stream())
                        .noneMatch(cell -> cell.strip().matches("(?s)[=+@＝-].*")),
                text);
    }

    @Test
    void noCellOfASpreadsheetIsAFormula() throws IOException {
        List<CountReport> reports = List.of(report(1, 4, 3, Kind.COUNTED, 18, "=1+1"));
        try (ZipFile zip = ZipFile.builder()
                .setSeekableByteChannel(
                        new SeekableInMemoryByteChannel(TableWriter.spreadsheet(List.of(table(reports)))))
                .get()) {
            ZipArchiveEntry sheet = zip.getEntry("xl/worksheets/sheet1.xml");
            String xml = new String(zip.getInputStream(sheet).readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(xml.contains("<row") && !xml.contains("<f>"), xml);
        }
    }

    @Test
    void aCountThatWasCorrectedIsWrittenOnceAndAPulledBackRoundTwice() {
        List<CountReport> reports = List.of(
                report(1, 1, 3, Kind.COUNTED, 17, ""),
                report(2, 1, 3, Kind.COUNTED, 18, ""),
                report(3, 1, 2, Kind.PULLED_BACK, -1, ""),
                report(4, 1, 3, Kind.COUNTED, 19, ""));
        List<List<OutTable.Cell>> rows = table(reports).rows();
        assertEquals(
                List.of(OutTable.whole(18), OutTable.words(""), OutTable.whole(19)),
                rows.subList(1, rows.size()).stream().map(row -> row.get(3)).toList());
    }

    @Test
    void theGroupsTableIsReadBackAsItStands() throws NotATable {
        long seed = Long.getLong("seed", 5);
        Random chance = new Random(seed);
        List<Student> students = NAMES.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> new Student(new StudentId(entry.getKey()), entry.getValue(), false, false, ""))
                .toList();
        List<CountReport> reports = new ArrayList<>();
        for (int each = 0; each < 60; each++) {
            Student student = students.get(chance.nextInt(students.size()));
            Kind kind = Kind.values()[chance.nextInt(2)];
            reports.add(report(each + 1, student.id().value(), 1 + chance.nextInt(12), kind, chance.nextInt(60), ""));
        }
        OutTable table = CountsTables.group(
                TOWER,
                students,
                student -> Standing.derivedFrom(
                        TOWER,
                        reports.stream()
                                .filter(report -> report.student().equals(student.id()))
                                .toList()));
        long held = reports.stream()
                .map(report -> report.student().value() + " " + report.round())
                .distinct()
                .count();
        for (byte[] file : List.of(TableWriter.csv(table), TableWriter.spreadsheet(List.of(table)))) {
            List<CountRow> rows = readBack(file);
            assertEquals(held, rows.size(), "seed " + seed);
            for (CountRow row : rows) {
                CountReport last = reports.stream()
                        .filter(report -> NAMES.get(report.student().value())
                                        .strip()
                                        .equals(row.student().strip())
                                && report.round() == row.place().round())
                        .reduce((earlier, later) -> later)
                        .orElseThrow();
                assertEquals(line(last), line(row), "seed " + seed);
            }
        }
    }
}
