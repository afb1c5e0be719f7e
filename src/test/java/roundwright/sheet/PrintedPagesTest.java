package roundwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import roundwright.course.Course;
import roundwright.sheet.pdf.PrintedPages;
import roundwright.sheet.style.Paper;
import roundwright.sheet.style.SheetStyle;
import roundwright.sheet.style.TypeSetting;

/** What a person sees before printing. */
class PrintedPagesTest {
    private static byte[] register(Paper paper) {
        Course course = SampleSheets.course("window-pot.md");
        return Sheets.of(SheetOrder.of(course)
                        .only(EnumSet.of(SheetKind.REGISTER))
                        .on(paper))
                .get(0)
                .bytes()
                .get();
    }

    @Test
    void aPageHasTheSizeOfItsPaperAndInkOnIt() {
        try (PrintedPages a4 = PrintedPages.open(register(Paper.A4));
                PrintedPages letter = PrintedPages.open(register(Paper.LETTER))) {
            BufferedImage image = a4.image(0, 1);
            assertEquals(1, a4.count());
            assertEquals(595, image.getWidth(), 1);
            assertEquals(842, image.getHeight(), 1);
            assertEquals(612, letter.image(0, 1).getWidth(), 1);
            long dark = IntStream.range(0, image.getWidth() * image.getHeight())
                    .map(i -> image.getRGB(i % image.getWidth(), i / image.getWidth()) & 0xFF)
                    .filter(blue -> blue < 128)
                    .count();
            assertTrue(dark > 500, dark + " dark points");
            assertEquals(1, a4.pageable().getNumberOfPages());
        }
    }

    @Test
    void theSheetForEasyReadingLiesOnCream() {
        Course course = SampleSheets.course("window-pot.md");
        SheetOrder order = SheetOrder.of(course)
                .lesson(1)
                .only(EnumSet.of(SheetKind.STUDENT))
                .styled(java.util.List.of(SheetStyle.PLAIN.typed(TypeSetting.READING)));
        try (PrintedPages pages =
                PrintedPages.open(Sheets.of(order).get(0).bytes().get())) {
            assertEquals(0xFBF5E6, pages.image(0, 0.5).getRGB(3, 3) & 0xFFFFFF);
        }
    }
}
