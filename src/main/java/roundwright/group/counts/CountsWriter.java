package roundwright.group.counts;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import roundwright.group.CountReport;
import roundwright.group.StudentId;

/** Writes reports as a table that any spreadsheet opens and {@link CountsReader} reads back. */
public final class CountsWriter {
    private static final String BEGINS_A_FORMULA = "=+-@\t\r";

    private CountsWriter() {}

    /**
     * One row a report, those that were taken back left out.
     *
     * @param name what each student is called
     */
    public static String write(List<CountReport> reports, Function<StudentId, String> name) {
        StringBuilder text = new StringBuilder();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader("student", "part", "round", "count", "date", "note", "pulled_back", "checks")
                .setRecordSeparator("\r\n")
                .get();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            for (CountReport report : reports) {
                if (report.stands()) {
                    printer.printRecord(cells(report, name));
                }
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static List<String> cells(CountReport report, Function<StudentId, String> name) {
        String count =
                report.count().isPresent() ? Integer.toString(report.count().getAsInt()) : "";
        return List.of(
                harmless(name.apply(report.student())),
                harmless(report.part()),
                Integer.toString(report.round()),
                report.kind() == CountReport.Kind.UNFINISHED ? "…" + count : count,
                report.at().atZone(ZoneOffset.UTC).toLocalDate().toString(),
                harmless(report.note()),
                report.kind() == CountReport.Kind.PULLED_BACK ? "yes" : "",
                harmless(checks(report)));
    }

    private static String checks(CountReport report) {
        return String.join(
                ";",
                report.checks().entrySet().stream()
                        .map(answer -> answer.getKey() + "=" + answer.getValue())
                        .toList());
    }

    /** A name or note that a spreadsheet would take for a formula gets an apostrophe before it, which shows it as text. */
    static String harmless(String cell) {
        String first = cell.stripLeading();
        boolean formula = !first.isEmpty() && BEGINS_A_FORMULA.indexOf(first.charAt(0)) >= 0
                || !cell.isEmpty() && BEGINS_A_FORMULA.indexOf(cell.charAt(0)) >= 0;
        return formula || cell.matches("'[=+\\-@'].*") ? "'" + cell : cell;
    }
}
