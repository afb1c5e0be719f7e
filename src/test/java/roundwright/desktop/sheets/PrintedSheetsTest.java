package roundwright.desktop.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.print.PageFormat;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import roundwright.course.file.CourseFile;
import roundwright.desktop.welcome.Samples;
import roundwright.sheet.Sheet;
import roundwright.sheet.SheetKind;
import roundwright.sheet.SheetOrder;
import roundwright.sheet.Sheets;

class PrintedSheetsTest {
    @Test
    void everyPageOfEverySheetIsShownAndPrintedInTurn() {
        var course =
                CourseFile.read(Samples.text("harbour-light").orElseThrow()).course();
        List<Sheet> sheets = Sheets.of(
                SheetOrder.of(course).only(EnumSet.of(SheetKind.STUDENT)).lesson(1));
        PrintedSheets printed = new PrintedSheets();
        sheets.forEach(printed::add);
        assertTrue(printed.count() >= sheets.size() && !sheets.isEmpty());
        assertEquals(printed.count(), printed.pageable().getNumberOfPages());
        assertEquals(sheets.get(0).title(), printed.title(0));
        PageFormat format = printed.pageable().getPageFormat(0);
        assertEquals(
                Math.round(format.getWidth()), Math.round(printed.image(0, 1).getWidth()), 1.0);
    }

    @Test
    void whatIsForScreensIsNotPrinted() {
        assertTrue(PrintedSheets.printed(SheetKind.TEACHER));
        assertTrue(!PrintedSheets.printed(SheetKind.PHONE));
    }
}
