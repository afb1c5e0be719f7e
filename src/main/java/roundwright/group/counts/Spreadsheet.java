package roundwright.group.counts;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import roundwright.wording.Wording;

/**
 * Tables out of a workbook in the open spreadsheet format (.xlsx). A sheet that is protected against writing can be read like any other;
 * a formula is what it last came to. What swells beyond all measure when it is unpacked is refused before it is read.
 */
final class Spreadsheet {
    private static final Wording WORDS = Wording.of("group");

    /** Bytes after unpacking: two hundred thousand rows of ten cells come to less. */
    private static final long LARGEST_UNPACKED = 128L << 20;

    /** Bytes of the words that all sheets share, which have to be held at once. */
    private static final long LARGEST_SHARED = 48L << 20;

    private static final int MOST_ENTRIES = 5_000;
    private static final int MOST_COLUMNS = 400;
    private static final int MOST_SHEETS = 100;

    private Spreadsheet() {}

    static List<Table> read(byte[] file) throws NotATable {
        try {
            measure(file);
            List<Table> tables = new ArrayList<>();
            try (ReadableWorkbook workbook =
                            new ReadableWorkbook(new ByteArrayInputStream(file), new ReadingOptions(true, false));
                    Stream<Sheet> sheets = workbook.getSheets()) {
                for (Sheet sheet : sheets.limit(MOST_SHEETS).toList()) {
                    List<Table.Row> rows = rows(sheet, workbook.isDate1904());
                    if (!rows.isEmpty()) {
                        tables.add(new Table(sheet.getName(), rows, 0));
                    }
                }
            }
            return tables;
        } catch (IOException | RuntimeException broken) {
            // the library throws whatever it stumbles over in a file that is not what it should be
            throw new NotATable(WORDS.say("table.broken-spreadsheet"));
        }
    }

    /** Unpacks without keeping anything, and stops at what no spreadsheet of counts comes to. */
    private static void measure(byte[] file) throws IOException, NotATable {
        long all = 0;
        int entries = 0;
        byte[] some = new byte[1 << 16];
        try (ZipFile zip = ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(file))
                .get()) {
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                refuseTooLarge(++entries > MOST_ENTRIES);
                long most = entry.getName().endsWith("sharedStrings.xml") ? LARGEST_SHARED : LARGEST_UNPACKED;
                try (InputStream stream = zip.getInputStream(entry)) {
                    long own = 0;
                    for (int read = stream.read(some); read >= 0; read = stream.read(some)) {
                        own += read;
                        refuseTooLarge(own > most || all + own > LARGEST_UNPACKED);
                    }
                    all += own;
                }
            }
        }
    }

    private static void refuseTooLarge(boolean tooLarge) throws NotATable {
        if (tooLarge) {
            throw new NotATable(WORDS.say("table.swells"));
        }
    }

    private static List<Table.Row> rows(Sheet sheet, boolean from1904) throws IOException, NotATable {
        RowsTaken taken = new RowsTaken();
        try (Stream<Row> stream = sheet.openStream()) {
            for (Iterator<Row> rows = stream.iterator(); rows.hasNext(); ) {
                Row row = rows.next();
                taken.add(row.getRowNum(), cells(row, from1904));
            }
        }
        return taken.rows();
    }

    private static List<String> cells(Row row, boolean from1904) {
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < Math.min(row.getCellCount(), MOST_COLUMNS); column++) {
            cells.add(row.getOptionalCell(column)
                    .map(cell -> text(cell, from1904))
                    .orElse(""));
        }
        return cells;
    }

    private static String text(Cell cell, boolean from1904) {
        boolean number = cell.getValue() instanceof BigDecimal;
        if (number && dated(cell)) {
            return SpreadsheetDay.text((BigDecimal) cell.getValue(), from1904);
        }
        if (number) {
            return ((BigDecimal) cell.getValue()).stripTrailingZeros().toPlainString();
        }
        boolean error = cell.getType() == CellType.ERROR;
        return error || cell.getValue() == null ? "" : String.valueOf(cell.getValue());
    }

    /** Whether a number is shown as a day: its form has a year, or a day and a month. */
    private static boolean dated(Cell cell) {
        String form = cell.getDataFormatString();
        if (form == null) {
            return false;
        }
        String signs = form.toLowerCase(java.util.Locale.ROOT).replaceAll("\"[^\"]*\"|\\[[^]]*]|\\\\.", "");
        return signs.contains("yy") || signs.contains("d") && signs.contains("m");
    }
}
