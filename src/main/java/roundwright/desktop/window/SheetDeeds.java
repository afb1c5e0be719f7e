package roundwright.desktop.window;

import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.sheets.SheetMaker;
import roundwright.desktop.sheets.SheetsCard;
import roundwright.desktop.sheets.StudentSheets;

/** What the window does about sheets. */
final class SheetDeeds {
    private SheetDeeds() {}

    static void bind(Desk desk, Deeds deeds, Asking asking, Frame frame) {
        SheetMaker maker = new SheetMaker(desk, frame.longWork(), asking);
        StudentSheets student = new StudentSheets(desk, maker, frame::chooseTarget);
        deeds.on(Deed.SHEETS, () -> asking.ask(new SheetsCard(desk, maker, asking, frame::chooseFolder, frame::print)));
        deeds.on(Deed.STUDENT_SHEET, student::savePage);
        deeds.on(Deed.STUDENT_WEB_PAGE, student::saveWebPage);
        desk.listen(matters -> enable(desk, deeds));
        enable(desk, deeds);
    }

    private static void enable(Desk desk, Deeds deeds) {
        boolean course = desk.course().isPresent();
        deeds.enable(Deed.SHEETS, course);
        deeds.enable(Deed.STUDENT_SHEET, course && desk.student().isPresent());
        deeds.enable(Deed.STUDENT_WEB_PAGE, course && desk.student().isPresent());
    }
}
