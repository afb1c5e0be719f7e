package roundwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.course.Course;
import roundwright.sheet.style.Paper;

/** Every kind of sheet in every style keeps the rules of accessible PDF. */
class AccessibleTest {
    private static final EnumSet<SheetKind> PRINTED = EnumSet.complementOf(EnumSet.of(SheetKind.PHONE));

    static Stream<Sheet> oneOfEach() {
        Course course = SampleSheets.course("window-pot.md");
        SheetOrder order =
                SheetOrder.of(course).forGroup(SampleSheets.group(course, SampleSheets.HARD_NAMES.subList(0, 6)));
        Stream<Sheet> lesson = Sheets.of(order.lesson(5).only(PRINTED).styled(SheetOrder.everyStyle())).stream();
        List<Sheet> all = Sheets.of(order.only(PRINTED).on(Paper.LETTER));
        Stream<Sheet> others = all.stream()
                .filter(sheet -> sheet.kind() != SheetKind.TEACHER && sheet.kind() != SheetKind.STUDENT)
                .filter(sheet -> !sheet.file().matches(".*-0[15].*"));
        return Stream.concat(lesson, others);
    }

    @ParameterizedTest
    @MethodSource("oneOfEach")
    void keepsTheRules(Sheet sheet) throws Exception {
        assertEquals(List.of(), Conformance.broken(sheet.bytes().get()), sheet.file());
    }

    @Test
    void everyFontIsEmbedded() throws IOException {
        Course course = SampleSheets.course("pocket-planet.md");
        byte[] pdf = SampleSheets.bytes(
                Sheets.of(SheetOrder.of(course)), FileNames.plain(course.name()) + "-lesson-1-teacher.pdf");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertEquals(true, font.isEmbedded(), font.getName());
                }
            }
            assertEquals("en-GB", document.getDocumentCatalog().getLanguage());
            assertFalse(document.getDocumentInformation().getTitle().isBlank());
        }
    }
}
