package roundwright.group.counts;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import roundwright.group.counts.OutTable.Cell;
import roundwright.wording.Beginning;

/** Writes tables as a text with separators or as a spreadsheet. No cell is ever a formula. */
public final class TableWriter {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
    private static final String TIME_IN_SPREADSHEET = "yyyy-mm-dd hh:mm";
    private static final String PROGRAM = "Roundwright";
    private static final String PROGRAM_VERSION = "1.0";

    /** Tells spreadsheets that the letters are UTF-8; without it some take them for others. */
    private static final String MARK = "\uFEFF";

    /** Longer words are cut by the form itself. */
    private static final int LONGEST_CELL = 32_000;

    private TableWriter() {}

    /** The table as comma-separated text, in UTF-8 with its mark. */
    public static byte[] csv(OutTable table) {
        StringBuilder text = new StringBuilder(MARK);
        CSVFormat format =
                CSVFormat.DEFAULT.builder().setRecordSeparator("\r\n").get();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            for (List<Cell> row : table.rows()) {
                printer.printRecord(row.stream().map(TableWriter::text).toList());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String text(Cell cell) {
        if (cell instanceof Cell.Whole whole) {
            return Integer.toString(whole.number());
        }
        return cell instanceof Cell.At at ? TIME.format(at.time()) : Harmless.of(((Cell.Words) cell).words());
    }

    /** The tables as the sheets of one spreadsheet. */
    public static byte[] spreadsheet(List<OutTable> tables) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, PROGRAM, PROGRAM_VERSION)) {
            for (OutTable table : tables) {
                write(workbook.newWorksheet(table.name()), table.rows());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private static void write(Worksheet sheet, List<List<Cell>> rows) throws IOException {
        sheet.freezePane(1, 1);
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).size(); column++) {
                write(sheet, row, column, rows.get(row).get(column));
            }
        }
        if (!rows.isEmpty() && !rows.get(0).isEmpty()) {
            sheet.range(0, 0, 0, rows.get(0).size() - 1).style().bold().set();
        }
        sheet.finish();
    }

    private static void write(Worksheet sheet, int row, int column, Cell cell) {
        if (cell instanceof Cell.Whole whole) {
            sheet.value(row, column, whole.number());
        } else if (cell instanceof Cell.At at) {
            sheet.value(row, column, SpreadsheetDay.number(at.time()));
            sheet.style(row, column).format(TIME_IN_SPREADSHEET).set();
        } else if (cell instanceof Cell.Words words && !words.words().isEmpty()) {
            sheet.value(row, column, Beginning.of(Harmless.marked(words.words()), LONGEST_CELL));
        }
    }
}
