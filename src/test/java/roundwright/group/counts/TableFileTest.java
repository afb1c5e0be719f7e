package roundwright.group.counts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TableFileTest {
    private static final Duration PATIENCE = Duration.ofSeconds(15);

    /** Fills a sheet. */
    private interface Filling {
        void fill(Worksheet sheet);
    }

    private static byte[] spreadsheet(Filling filling) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "Trial", "1.0")) {
            workbook.newWorksheet("Empty");
            filling.fill(workbook.newWorksheet("Tuesday"));
        }
        return bytes.toByteArray();
    }

    private static void headings(Worksheet sheet) {
        List<String> words = List.of("Student", "Round", "Count", "When");
        for (int column = 0; column < words.size(); column++) {
            sheet.value(0, column, words.get(column));
        }
    }

    @Test
    void aSpreadsheetHoldsNumbersDaysAndWhatFormulasCameTo() throws Exception {
        byte[] file = spreadsheet(sheet -> {
            headings(sheet);
            sheet.value(1, 0, "Inés");
            sheet.value(1, 1, 7);
            sheet.value(1, 2, 36.0);
            sheet.value(1, 3, 46_097.75);
            sheet.style(1, 3).format("dd/mm/yyyy hh:mm").set();
            sheet.value(3, 0, "Bram");
            sheet.value(3, 1, 12.5);
        });
        List<Table> tables = TableFile.read(file);
        assertEquals(1, tables.size());
        assertEquals("Tuesday", tables.get(0).name());
        assertEquals(
                List.of("Inés", "7", "36", "2026-03-16T18:00"),
                tables.get(0).rows().get(1).cells());
        assertEquals(4, tables.get(0).rows().get(2).line());
        assertEquals(List.of("Bram", "12.5"), tables.get(0).rows().get(2).cells());
    }

    /** Shared words with dress in them, a formula with what it came to, a day in a form that every program knows, an error. */
    @Test
    void aWorkbookIsReadAsOtherProgramsWriteIt() throws Exception {
        String sheet =
                "<worksheet><sheetData><row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\"><f>3*3</f><v>9</v></c>"
                        + "<c r=\"C1\" s=\"1\"><v>46097</v></c><c r=\"D1\" t=\"e\"><v>#N/A</v></c><c r=\"E1\"><v>1.2E1</v></c></row>"
                        + "<row r=\"7\"><c r=\"B7\" t=\"str\"><f>A1</f><v>Ida</v></c></row></sheetData></worksheet>";
        Table table = TableFile.read(workbook(sheet)).get(0);
        assertEquals("Tue", table.name());
        assertEquals(
                List.of(
                        new Table.Row(1, List.of("Inés", "9", "2026-03-16", "", "12")),
                        new Table.Row(7, List.of("", "Ida"))),
                table.rows());
    }

    private static byte[] workbook(String sheet) throws IOException {
        String namespace = "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" "
                + "xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"";
        String type = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
        String relations = "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">";
        String relation = "<Relationship Id=\"%s\" Type=\"" + type + "%s\" Target=\"%s\"/>";
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            write(
                    zip,
                    "[Content_Types].xml",
                    "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                            + content("workbook", "sheet.main")
                            + content("styles", "styles")
                            + content("sharedStrings", "sharedStrings")
                            + content("worksheets/sheet1", "worksheet")
                            + "</Types>");
            write(
                    zip,
                    "_rels/.rels",
                    relations + String.format(relation, "r1", "officeDocument", "xl/workbook.xml")
                            + "</Relationships>");
            write(
                    zip,
                    "xl/workbook.xml",
                    "<workbook " + namespace
                            + "><sheets><sheet name=\"Tue\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>");
            write(
                    zip,
                    "xl/_rels/workbook.xml.rels",
                    relations
                            + String.format(relation, "r1", "worksheet", "worksheets/sheet1.xml")
                            + String.format(relation, "r2", "styles", "styles.xml")
                            + String.format(relation, "r3", "sharedStrings", "sharedStrings.xml")
                            + "</Relationships>");
            write(
                    zip,
                    "xl/styles.xml",
                    "<styleSheet " + namespace
                            + "><cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/></cellXfs></styleSheet>");
            write(
                    zip,
                    "xl/sharedStrings.xml",
                    "<sst " + namespace + "><si><r><t>In</t></r><r><rPr><b/></rPr><t>és</t></r></si></sst>");
            write(zip, "xl/worksheets/sheet1.xml", sheet.replace("<worksheet>", "<worksheet " + namespace + ">"));
        }
        return bytes.toByteArray();
    }

    private static String content(String part, String type) {
        return "<Override PartName=\"/xl/" + part + ".xml\" ContentType=\"application/vnd.openxmlformats-officedocument"
                + ".spreadsheetml." + type + "+xml\"/>";
    }

    @Test
    void aSheetThatIsProtectedAgainstWritingIsRead() throws Exception {
        byte[] file = spreadsheet(sheet -> {
            headings(sheet);
            sheet.protect("secret");
        });
        assertEquals(1, TableFile.read(file).get(0).rows().size());
    }

    /** A file that is refused. */
    private record Bad(String name, byte[] file, String says) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static byte[] zip(String entry, long zeros) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(entry));
            byte[] some = new byte[1 << 16];
            for (long written = 0; written < zeros; written += some.length) {
                zip.write(some);
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] withXml(String entry, String xml) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            write(zip, "_rels/.rels", "<Relationships/>");
            write(
                    zip,
                    "xl/workbook.xml",
                    "<workbook><sheets><sheet name=\"A\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>");
            write(zip, entry, xml);
        }
        return bytes.toByteArray();
    }

    private static void write(ZipOutputStream zip, String entry, String words) throws IOException {
        zip.putNextEntry(new ZipEntry(entry));
        ((OutputStream) zip).write(words.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] random(int length, int... start) {
        byte[] bytes = new byte[length];
        new Random(3).nextBytes(bytes);
        for (int at = 0; at < start.length; at++) {
            bytes[at] = (byte) start[at];
        }
        return bytes;
    }

    private static List<Bad> bad() throws IOException {
        String entities = "<!DOCTYPE a [<!ENTITY x0 \"ha\">" + entities() + "]><worksheet>&x20;</worksheet>";
        return List.of(
                new Bad("a zip that swells", zip("xl/worksheets/sheet1.xml", 1L << 30), "swells"),
                new Bad("words that swell", zip("xl/sharedStrings.xml", 100L << 20), "swells"),
                new Bad("another zip", zip("photo.bin", 10), "none that can be read"),
                new Bad("entities that swell", withXml("xl/worksheets/sheet1.xml", entities), "none that can be read"),
                new Bad("half a zip", random(3_000, 'P', 'K', 3, 4), "none that can be read"),
                new Bad("a locked spreadsheet", random(3_000, 0xd0, 0xcf, 0x11, 0xe0), "locked with a password"),
                new Bad("a picture", random(30_000, 0xff, 0xd8, 0xff), "neither a text nor a spreadsheet"),
                new Bad("a document", "%PDF-1.7 abc".getBytes(StandardCharsets.UTF_8), "neither a text"),
                new Bad("very many rows", "a,1,6\n".repeat(300_000).getBytes(StandardCharsets.UTF_8), "200000 rows"),
                new Bad(
                        "very many columns",
                        ("x" + ",x".repeat(5_000_000)).getBytes(StandardCharsets.UTF_8),
                        "columns"),
                new Bad("too large a file", new byte[TableFile.LARGEST + 1], "megabytes"));
    }

    private static String entities() {
        StringBuilder entities = new StringBuilder();
        for (int each = 1; each <= 20; each++) {
            String before = "&x" + (each - 1) + ";";
            entities.append("<!ENTITY x")
                    .append(each)
                    .append(" \"")
                    .append(before.repeat(10))
                    .append("\">");
        }
        return entities.toString();
    }

    @ParameterizedTest
    @MethodSource("bad")
    void whatIsNoTableIsRefusedInASentenceAndInTime(Bad bad) {
        NotATable refused = assertTimeoutPreemptively(
                PATIENCE, () -> assertThrows(NotATable.class, () -> TableFile.read(bad.file())));
        assertTrue(refused.getMessage().contains(bad.says()), refused.getMessage());
        assertFalse(refused.getMessage().contains("Exception"), refused.getMessage());
    }

    @Test
    void aSpreadsheetThatIsCutShortOrHasABadByteNeverThrowsAnythingElse() throws Exception {
        byte[] good = spreadsheet(TableFileTest::headings);
        long seed = Long.getLong("seed", 8);
        Random chance = new Random(seed);
        for (int run = 0; run < 300; run++) {
            byte[] file = java.util.Arrays.copyOf(good, run % 2 == 0 ? chance.nextInt(good.length) : good.length);
            if (file.length > 0) {
                file[chance.nextInt(file.length)] ^= (byte) (1 + chance.nextInt(255));
            }
            try {
                TableFile.read(file);
            } catch (NotATable refused) {
                assertFalse(refused.getMessage().isBlank(), "seed " + seed);
            }
        }
    }

    @Test
    void aHundredThousandRowsOfASpreadsheetAreReadInTime() throws Exception {
        byte[] file = spreadsheet(sheet -> {
            headings(sheet);
            for (int row = 1; row <= 100_000; row++) {
                sheet.value(row, 0, "Bram");
                sheet.value(row, 1, row % 12);
                sheet.value(row, 2, 6);
            }
        });
        assertTimeoutPreemptively(
                PATIENCE,
                () -> assertEquals(100_001, TableFile.read(file).get(0).rows().size()));
    }
}
